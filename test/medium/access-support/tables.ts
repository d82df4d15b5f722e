import type pg from 'pg';

/** Whose row it is, in SQL over the row `t`; null for nobody's. */
export const OWNER_OF: Record<string, string> = {
  practice: 't.id', staff: 't.practice_id', room: 't.practice_id', equipment: 't.practice_id', detector_size: 't.practice_id', accreditation: 't.practice_id', approved_text: 't.practice_id',
  person: 't.practice_id', dog: 't.practice_id', dog_name: 't.practice_id', dog_identifier: 't.practice_id', stud_book_number: 't.practice_id', dog_role: 't.practice_id',
  orders: 't.practice_id', slot: 't.practice_id', message: 't.practice_id', captured_mail: 't.practice_id', audit: 't.practice_id', link: 't.practice_id', package: 't.practice_id',
  data_request: 't.practice_id', data_request_event: 't.practice_id', tombstone: 't.practice_id', order_access: 't.practice_id', visit: byOrder(), study: byOrder(), fact: byOrder(), image: byOrder(), room_mark: byOrder(), document: byOrder(), problem: byOrder(),
  group_booking: 't.practice_id', group_booking_dog: 't.practice_id', waiting_entry: 't.practice_id', slot_offer: 't.practice_id',
  authority: 't.practice_id', dog_merge: 't.practice_id', centre_closure: 't.practice_id', incident: 't.practice_id',
  fee_entry: 't.practice_id', fee_statement: 't.practice_id', centre_bill: 't.practice_id', centre_bill_line: 't.practice_id', centre_bill_event: 't.practice_id',
  centre_channel: 't.practice_id', channel_trial: 't.practice_id', delivery: byOrder(), delivery_item: byOrder(),
  result_delivery: 't.practice_id', result_left: byOrder(), api_key: 't.practice_id', webhook: 't.practice_id', webhook_delivery: 't.practice_id', webhook_try: 't.practice_id',
  console: 't.practice_id', received_image: 't.practice_id', commitment: 't.practice_id', performed_step: 't.practice_id', performed_settled: 't.practice_id',
  package_access: '(SELECT p.practice_id FROM package p WHERE p.id = t.package_id)',
};

/** Without a person's or a practice's data, or never read by the api's role. */
export const SHARED = ['scheme', 'centre'];
export const CLOSED = ['session', 'centre_key', 'used_signature', 'outbox', 'rate_limits', '_prisma_migrations', 'statistics_study', 'counting_row', 'counting_cell', 'reference_set', 'reference_member', 'reference_freeze', 'breed_births', 'centre_channel_secret', 'delivery_key'];

function byOrder(): string {
  return '(SELECT o.practice_id FROM orders o WHERE o.id = t.order_id)';
}

export async function tablesOf(owner: pg.Client): Promise<string[]> {
  const { rows } = await owner.query<{ name: string }>("SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY 1");
  return rows.map(({ name }) => name);
}

/** Looking leaves a trace, and so does being there. */
const TRACES = ['audit', 'session', 'rate_limits', '_prisma_migrations'];

/** What every table holds, to be compared later: a line for each. */
export async function contentOf(owner: pg.Client, { practice }: { practice?: string } = {}): Promise<Record<string, string>> {
  const tables = (await tablesOf(owner)).filter((table) => !TRACES.includes(table) && (!practice || table in OWNER_OF));
  const columns = tables.map((table) => `(SELECT count(*) || ' ' || COALESCE(md5(string_agg(t::text, '|' ORDER BY t::text)), '') FROM ${table} t ${practice ? `WHERE ${OWNER_OF[table]!} = '${practice}'` : ''}) AS "${table}"`);
  const { rows } = await owner.query<Record<string, string>>(`SELECT ${columns.join(', ')}`);
  return rows[0]!;
}

const OF_TYPE: Record<string, string> = { uuid: 'gen_random_uuid()', text: "'x'", date: "'2026-01-01'", 'timestamp with time zone': 'now()', jsonb: "'{}'", integer: '1', bigint: '1', boolean: 'true', inet: "'127.0.0.1'", ARRAY: "'{}'" };

/** A row of this practice's in every table that the demo leaves empty, so that there is something to be seen. */
export async function fillEmpty(owner: pg.Client, { practice, order }: { practice: string; order: string }): Promise<void> {
  for (const table of Object.keys(OWNER_OF)) {
    const { rowCount } = await owner.query(`SELECT 1 FROM ${table} t WHERE ${OWNER_OF[table]!} = $1 LIMIT 1`, [practice]);
    if (rowCount) continue;
    const { rows } = await owner.query<{ name: string; type: string }>(
      "SELECT column_name AS name, data_type AS type FROM information_schema.columns WHERE table_schema = 'public' AND table_name = $1 AND (is_nullable = 'NO' AND column_default IS NULL OR column_name IN ('practice_id', 'order_id'))", [table]);
    const known: Record<string, string> = { practice_id: `'${practice}'`, order_id: `'${order}'` };
    await owner.query(`INSERT INTO ${table} (${rows.map((r) => `"${r.name}"`).join(', ')}) VALUES (${rows.map((r) => known[r.name] ?? OF_TYPE[r.type] ?? 'NULL').join(', ')})`);
  }
}
