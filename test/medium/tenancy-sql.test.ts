import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { belongingsOf, type Known } from './access-support/belongings.js';
import { openApi, type OpenApi } from './access-support/open-api.js';
import { CLOSED, contentOf, fillEmpty, OWNER_OF, SHARED, tablesOf } from './access-support/tables.js';

/** PostgreSQL's "insufficient privilege", also for a row that a policy does not let in. */
const REFUSED = '42501';

let open: OpenApi;
let weirside: Known;
let karsby: Known;
/** The api's own login, as a fault in the api would have it. */
let api: pg.Client;

beforeAll(async () => {
  open = await openApi(['Heron', 'Kestrel']);
  const road = (dog: string) => open.roads.find((r) => r.dog.call === dog)!;
  weirside = await belongingsOf(open, road('Heron'));
  karsby = await belongingsOf(open, road('Kestrel'));
  for (const { practice, ids } of [weirside, karsby]) await fillEmpty(open.owner, { practice, order: ids.order });
  api = new pg.Client(open.database.apiUrl);
  await api.connect();
}, 60_000);
afterAll(async () => {
  await api.end();
  await open.close();
});

/** Runs as Karsby's people do and takes it back; answers the rows and how many were touched, or the code of the refusal. */
async function asKarsby(sql: string, values: unknown[] = []): Promise<{ rows: Record<string, unknown>[]; count: number; code?: string }> {
  await api.query('BEGIN');
  try {
    await api.query("SELECT set_config('role', 'app_rls', true), set_config('app.practice', $1, true), set_config('app.centre', '', true)", [karsby.practice]);
    const { rows, rowCount } = await api.query<Record<string, unknown>>(sql, values);
    return { rows, count: rowCount ?? 0 };
  } catch (error) {
    return { rows: [], count: 0, code: (error as { code: string }).code };
  } finally {
    await api.query('ROLLBACK');
  }
}

const owned = async (table: string, practice: string): Promise<number> => (await open.owner.query<{ n: number }>(`SELECT count(*)::int AS n FROM ${table} t WHERE ${OWNER_OF[table]!} = $1`, [practice])).rows[0]!.n;
const columnsOf = async (table: string): Promise<string[]> =>
  (await open.owner.query<{ name: string }>('SELECT column_name AS name FROM information_schema.columns WHERE table_schema = $1 AND table_name = $2', ['public', table])).rows.map((r) => r.name);

it('every table is somebody’s, or known not to be', async () => {
  expect(await tablesOf(open.owner)).toEqual([...Object.keys(OWNER_OF), ...SHARED, ...CLOSED].sort());
});

describe('as the api’s role, for another practice', () => {
  it.each(Object.keys(OWNER_OF))('no row of %s is seen', async (table) => {
    // Where not every column may be read, neither may a row's place.
    const key = ['staff', 'api_key', 'webhook'].includes(table) ? 'id::text' : 'ctid::text';
    const theirs = await open.owner.query<{ at: string }>(`SELECT ${key} AS at FROM ${table} t WHERE ${OWNER_OF[table]!} = $1`, [weirside.practice]);
    const seen = await asKarsby(`SELECT ${key} AS at FROM ${table}`);
    expect(theirs.rows.length).toBeGreaterThan(0);
    expect(seen.code).toBeUndefined();
    expect(seen.rows.length).toBeGreaterThan(0);
    const known = new Set(seen.rows.map((r) => r.at));
    expect(theirs.rows.filter((r) => known.has(r.at))).toEqual([]);
  });

  it.each(Object.keys(OWNER_OF))('no row of %s is changed, taken over or deleted', async (table) => {
    const before = await contentOf(open.owner, { practice: weirside.practice });
    const own = await owned(table, karsby.practice);
    const columns = await columnsOf(table);
    // Without reading anything: neither the condition nor the new value names a column of the row.
    const blind = ['practice_id', 'order_id', 'package_id', 'name'].filter((c) => columns.includes(c));
    const values: Record<string, string> = { practice_id: karsby.practice, order_id: karsby.ids.order, package_id: karsby.ids.package, name: 'taken over' };
    for (const sql of [...blind.map((c) => `UPDATE ${table} SET ${c} = '${values[c]!}'`), `DELETE FROM ${table}`]) {
      const { count, code } = await asKarsby(sql);
      if (code === undefined) expect({ sql, most: count <= own }).toEqual({ sql, most: true });
      else expect(['42501', '23505']).toContain(code);
    }
    expect(await contentOf(open.owner, { practice: weirside.practice })).toEqual(before);
  });

  it('nothing is added to another’s order, dog, package or practice', async () => {
    const { order, dog, person, visit, package: parcel } = weirside.ids;
    const now = new Date();
    const tried: [string, unknown[]][] = [
      ["INSERT INTO fact (order_id, id, type, at, rec, by, by_name, role, practice, body) VALUES ($1, $2, 'orderCancelled', $3, $3, 'x', 'x', 'desk', 'x', '{}')", [order, randomUUID(), now]],
      ["INSERT INTO visit (id, order_id, practice_id, step, open) VALUES ($2, $1, $3, 'booked', true)", [order, randomUUID(), karsby.practice]],
      ["INSERT INTO study (id, order_id, practice_id, protocol, version, centre_id, step, open) VALUES ($2, $1, $3, 'elbow', '1', $2, 'wanted', true)", [order, randomUUID(), karsby.practice]],
      ["INSERT INTO image (order_id, sha256, kind, size, width, height, by) VALUES ($1, 'x', 'png', 1, 1, 1, 'x')", [order]],
      ["INSERT INTO document (id, order_id, kind, name, template, snapshot, snapshot_hash, at) VALUES ($2, $1, 'letter', 'x', 'x', '{}', 'x', $3)", [order, randomUUID(), now]],
      ["INSERT INTO problem (order_id, job, payload, words) VALUES ($1, 'x', '{}', 'x')", [order]],
      ["INSERT INTO link (token_hash, kind, practice_id, order_id, person_id, expires_at) VALUES ('x', 'owner', $3, $1, $2, $4)", [order, person, karsby.practice, now]],
      ["INSERT INTO message (order_id, practice_id, once_key, kind, to_name, to_email, subject, body) VALUES ($1, $2, 'x', 'consentLink', 'x', 'x@nowhere.example', '', '{}')", [order, weirside.practice]],
      ["INSERT INTO package (id, order_id, practice_id, study_id, number, manifest, summary, sealed_at) VALUES ($2, $1, $3, $2, 'x', 'x', '{}', $4)", [order, randomUUID(), karsby.practice, now]],
      ['INSERT INTO package_access (package_id, centre_id, send_id, sent_at) VALUES ($1, $2, $2, $3)', [parcel, randomUUID(), now]],
      ["INSERT INTO order_access (order_id, practice_id, why) VALUES ($1, $2, 'referral')", [order, karsby.practice]],
      ["INSERT INTO slot (practice_id, visit_id, order_id, kind, resource_id, period) VALUES ($1, $2, $3, 'room', $2, tstzrange(now(), now() + interval '1 hour'))", [weirside.practice, visit, order]],
      ["INSERT INTO dog_name (practice_id, dog_id, name, valid_from) VALUES ($1, $2, 'x', '2026-01-01')", [weirside.practice, dog]],
      ["INSERT INTO dog_role (practice_id, dog_id, person_id, role, valid_from) VALUES ($1, $2, $3, 'owner', '2026-01-01')", [weirside.practice, dog, person]],
      ["INSERT INTO person (practice_id, name) VALUES ($1, 'x')", [weirside.practice]],
      ["INSERT INTO room (practice_id, name, kind) VALUES ($1, 'x', 'xray')", [weirside.practice]],
      ["SELECT app.share_order($1, $2, 'referral')", [order, karsby.practice]],
    ];
    const answers: [string, string | undefined][] = [];
    for (const [sql, values] of tried) answers.push([sql, (await asKarsby(sql, values)).code]);
    expect(answers).toEqual(tried.map(([sql]) => [sql, REFUSED]));
  });

  it('a mail about another’s order is not written either, under one’s own name', async () => {
    const sql = "INSERT INTO message (order_id, practice_id, once_key, kind, to_name, to_email, subject, body) VALUES ($1, $2, 'x', 'consentLink', 'x', 'x@nowhere.example', '', '{}')";
    expect(await asKarsby(sql, [weirside.ids.order, karsby.practice])).toMatchObject({ code: REFUSED });
    expect(await asKarsby(sql, [karsby.ids.order, karsby.practice])).toMatchObject({ count: 1 });
  });

  it('a centre is not changed, and gets no reader, under the name of a practice that did not register it', async () => {
    const { rows } = await open.owner.query<{ id: string; scheme: string }>('SELECT id, scheme_id AS scheme FROM centre');
    expect(await asKarsby("UPDATE centre SET email = 'x@nowhere.example'")).toMatchObject({ code: REFUSED });
    expect(await asKarsby("INSERT INTO staff (scheme_id, centre_id, name, email, password_hash, roles) VALUES ($1, $2, 'x', 'x@nowhere.example', 'x', '{reader}')", [rows[0]!.scheme, rows[0]!.id])).toMatchObject({ code: REFUSED });
  });

  it('the rules of another’s order are not told', async () => {
    expect((await asKarsby('SELECT app.practice_rules($1) AS told', [weirside.ids.order])).rows).toEqual([{ told: {} }]);
    expect((await asKarsby('SELECT app.practice_rules($1) AS told', [karsby.ids.order])).rows).toEqual([{ told: expect.objectContaining({ [karsby.practice]: expect.anything() }) as unknown }]);
  });
});

describe('what is typed into a search', () => {
  const typed = async (practice: string): Promise<string[]> => (await open.owner.query<{ words: string }>(`SELECT call_name AS words FROM dog WHERE practice_id = $1 UNION SELECT animal_id FROM dog WHERE practice_id = $1 UNION SELECT name FROM dog_name WHERE practice_id = $1
    UNION SELECT value FROM dog_identifier WHERE practice_id = $1 UNION SELECT name FROM person WHERE practice_id = $1 UNION SELECT phone FROM person WHERE practice_id = $1`, [practice])).rows.map((r) => r.words).filter(Boolean);
  const hits = async (words: string): Promise<string[]> => (await asKarsby('SELECT dog FROM app.dog_hits($1, $2)', [words, /^[\d ]+$/.test(words) ? words.replaceAll(' ', '') : null])).rows.map((r) => r.dog as string);

  it('hits dogs of the own practice alone, whatever it is', async () => {
    const own = new Set((await open.owner.query<{ id: string }>('SELECT id FROM dog WHERE practice_id = $1', [karsby.practice])).rows.map((r) => r.id));
    for (const words of ['', ...(await typed(weirside.practice)), ...(await typed(karsby.practice))]) expect([words, (await hits(words)).filter((id) => !own.has(id))]).toEqual([words, []]);
    for (const words of ['', ...(await typed(karsby.practice))]) expect([words, (await hits(words)).length > 0]).toEqual([words, true]);
  });
});

describe('as the api’s role, for nobody’s practice', () => {
  it('no row of any practice is seen', async () => {
    await api.query("BEGIN; SELECT set_config('role', 'app_rls', true), set_config('app.practice', '', true), set_config('app.centre', '', true)");
    for (const table of Object.keys(OWNER_OF)) expect({ table, rows: (await api.query(`SELECT ${table === 'staff' ? 'id' : '1'} FROM ${table}`)).rowCount }).toEqual({ table, rows: 0 });
    for (const typed of ['', 'Heron']) expect((await api.query('SELECT 1 FROM app.dog_hits($1, NULL)', [typed])).rowCount).toBe(0);
    await api.query('ROLLBACK');
  });

  it('no row is seen through a reading centre but the packages it was sent and what it said itself', async () => {
    const { rows: [{ centre }] } = await open.owner.query("SELECT centre_id AS centre FROM package_access LIMIT 1") as unknown as { rows: [{ centre: string }] };
    await api.query(`BEGIN; SELECT set_config('role', 'app_rls', true), set_config('app.practice', '', true), set_config('app.centre', '${centre}', true)`);
    const seen: Record<string, number | null> = {};
    for (const table of Object.keys(OWNER_OF)) seen[table] = (await api.query(`SELECT ${table === 'staff' ? 'id' : '1'} FROM ${table}`)).rowCount;
    await api.query('ROLLBACK');
    expect(Object.keys(seen).filter((table) => seen[table]! > 0).sort()).toEqual(['package', 'package_access', 'result_left', 'staff']);
  });
});

describe('the api’s login', () => {
  const refused = async (...statements: string[]) => {
    await api.query('BEGIN');
    try {
      for (const sql of statements.slice(0, -1)) await api.query(sql);
      await expect(api.query(statements.at(-1)!)).rejects.toMatchObject({ code: REFUSED });
    } finally {
      await api.query('ROLLBACK');
    }
  };

  it('sees nothing when the role is put back', async () => {
    for (const table of Object.keys(OWNER_OF)) await refused('SET LOCAL ROLE app_rls', 'RESET ROLE', `SELECT 1 FROM ${table}`);
  });

  it.each(['app_system', 'cotyla_worker', 'postgres'])('does not become %s', (role) => refused('SET LOCAL ROLE app_rls', `SET ROLE ${role}`));

  it('is no owner, no superuser and bypasses no policy', async () => {
    const { rows } = await open.owner.query("SELECT rolname, rolsuper, rolbypassrls, rolcreaterole FROM pg_roles WHERE rolname IN ('app_rls', 'app_system', 'cotyla_api', 'cotyla_worker') AND (rolsuper OR rolbypassrls OR rolcreaterole)");
    expect(rows).toEqual([]);
    const { rows: open_ } = await open.owner.query("SELECT c.relname FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace WHERE n.nspname = 'public' AND c.relkind = 'r' AND NOT c.relrowsecurity AND c.relname NOT LIKE '\\_prisma%' AND c.relname <> 'rate_limits'");
    expect(open_).toEqual([]);
  });

  it.each(['signing_key FROM scheme', 'password_hash FROM staff', '* FROM scheme', '* FROM staff', '* FROM session', '* FROM outbox'])('does not read %s', async (what) => {
    expect(await asKarsby(`SELECT ${what}`)).toMatchObject({ code: REFUSED });
  });

  it('makes no session of its own and turns no policy off', async () => {
    expect(await asKarsby("INSERT INTO session (token_hash, csrf, kind, expires_at) VALUES ('x', 'x', 'staff', now())")).toMatchObject({ code: REFUSED });
    expect(await asKarsby('ALTER TABLE orders DISABLE ROW LEVEL SECURITY')).toMatchObject({ code: REFUSED });
    expect(await asKarsby('TRUNCATE fact')).toMatchObject({ code: REFUSED });
  });
});

describe('facts and the audit', () => {
  it.each(['UPDATE fact SET by_name = by_name', 'DELETE FROM fact', 'UPDATE audit SET role = role', 'DELETE FROM audit'])('are appended, not changed, by the api: %s', async (sql) => {
    expect(await asKarsby(sql)).toMatchObject({ code: REFUSED });
  });

  it.each(['UPDATE fact SET by_name = by_name', 'DELETE FROM fact', 'UPDATE audit SET role = role', 'DELETE FROM audit'])('nor by the worker, nor by the owner of the tables: %s', async (sql) => {
    await expect(open.everywhere((tx) => tx.$executeRawUnsafe(sql))).rejects.toThrow();
    await expect(open.owner.query(sql)).rejects.toMatchObject({ code: REFUSED });
  });
});
