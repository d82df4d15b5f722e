import { randomBytes, randomUUID } from 'node:crypto';
import type pg from 'pg';
import { tablesOf } from '../access-support/tables.js';

type Rows = Record<string, object[]>;
/** An order with its dog and people, as its rows. */
export interface Original { order: string; text: string; tokens: RegExp }
/** The same, under ids of its own. `of` answers what stands for an id, or for all ids in a value. */
export interface Copy { order: string; rows: Rows; of<T>(value: T): T }

/** What holds somebody's time, or is the trace of a look: not copied. */
const LEFT = ['slot', 'audit', 'link', 'session', 'outbox', 'problem', 'captured_mail', 'group_booking_dog', 'waiting_entry', 'slot_offer', 'dog_merge', 'reference_member'];
const UUID = '[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}';
const SHARED = ['scheme', 'practice', 'staff', 'room', 'equipment', 'centre', 'approved_text', 'accreditation'];

/** Copies of an order in the state in which it is, each with a dog and people of its own, so that one thing can be tried on each. */
export class Copies {
  #made = 0;
  private constructor(private readonly owner: pg.Client, private readonly query: string, private readonly shared: Set<string>) {}

  static async over(owner: pg.Client): Promise<Copies> {
    const { rows } = await owner.query<{ table: string; column: string }>("SELECT table_name AS table, column_name AS column FROM information_schema.columns WHERE table_schema = 'public' AND column_name IN ('order_id', 'dog_id')");
    const all = await tablesOf(owner);
    const people = 'SELECT person_id FROM dog_role WHERE dog_id = (SELECT dog_id FROM orders WHERE id = $1)';
    const where = new Map([['person', `t.id IN (${people})`], ['dog', 't.id = (SELECT dog_id FROM orders WHERE id = $1)'], ['orders', 't.id = $1'], ['package_access', 't.package_id IN (SELECT id FROM package WHERE order_id = $1)']]);
    for (const { table, column } of rows) if (!LEFT.includes(table) && all.includes(table) && !where.has(table)) where.set(table, column === 'order_id' ? 't.order_id = $1' : 't.dog_id = (SELECT dog_id FROM orders WHERE id = $1)');
    const parts = [...where].map(([table, test]) => `'${table}', COALESCE((SELECT jsonb_agg(to_jsonb(t) ORDER BY to_jsonb(t)::text) FROM ${table} t WHERE ${test}), '[]')`);
    const ids = await owner.query<{ id: string }>(SHARED.map((table) => `SELECT id::text FROM ${table}`).join(' UNION '));
    return new Copies(owner, `SELECT jsonb_build_object(${parts.join(', ')})::text AS rows`, new Set(ids.rows.map((r) => r.id)));
  }

  /** Every row of the order, in one text that can be compared. */
  async rowsOf(order: string): Promise<string> {
    return (await this.owner.query<{ rows: string }>(this.query, [order])).rows[0]!.rows;
  }

  async take(order: string): Promise<Original> {
    const text = await this.rowsOf(order);
    const rows = JSON.parse(text) as Record<string, Record<string, string | null>[]>;
    const named = [...rows.orders!.map((r) => r.accession), ...rows.dog!.map((r) => r.animal_id), ...rows.dog_identifier!.map((r) => r.value), ...rows.package!.map((r) => r.number), ...rows.document!.map((r) => r.serial)];
    return { order, text, tokens: new RegExp([UUID, ...named.filter((n) => n !== null && n !== undefined)].join('|'), 'g') };
  }

  async make(original: Original, count: number): Promise<Copy[]> {
    const copies = Array.from({ length: count }, () => this.#renamed(original));
    for (const table of Object.keys(copies[0]?.rows ?? {})) {
      const rows = copies.flatMap((c) => c.rows[table]!);
      if (rows.length > 0) await this.owner.query(`INSERT INTO ${table} SELECT r.* FROM jsonb_populate_recordset(null::${table}, $1) r ${table === 'order_access' ? 'ON CONFLICT DO NOTHING' : ''}`, [JSON.stringify(rows)]);
    }
    return copies;
  }

  #renamed({ order, text, tokens }: Original): Copy {
    const names = new Map<string, string>();
    const number = String(++this.#made).padStart(6, '0');
    const fresh = (name: string): string => {
      if (new RegExp(UUID).test(name)) return this.shared.has(name) ? name : randomUUID();
      return /^P-[0-9A-F]{8}$/.test(name) ? `P-${randomBytes(4).toString('hex').toUpperCase()}` : name.slice(0, -6) + number;
    };
    const rename = (words: string) => words.replaceAll(tokens, (name) => names.get(name) ?? (names.set(name, fresh(name)), names.get(name)!));
    const rows = JSON.parse(rename(text)) as Rows;
    return { order: rename(order), rows, of: (value) => JSON.parse(rename(JSON.stringify(value))) as typeof value };
  }
}
