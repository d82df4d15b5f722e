import { randomUUID } from 'node:crypto';
import pg from 'pg';

/** So many orders like this one, at the same time of the same day: what nobody can book is a heavy day all the same. */
export async function repeatOrder(ownerUrl: string, order: string, times: number): Promise<void> {
  const owner = new pg.Client(ownerUrl);
  await owner.connect();
  try {
    const rowsOf = async (table: string, key: string) => (await owner.query<{ row: object }>(`SELECT to_jsonb(t) AS row FROM ${table} t WHERE ${key} = $1`, [order])).rows.map((r) => r.row);
    const [orders, facts, visits, studies] = [await rowsOf('orders', 'id'), await rowsOf('fact', 'order_id'), await rowsOf('visit', 'order_id'), await rowsOf('study', 'order_id')];
    facts.sort((a, b) => (a as { seq: number }).seq - (b as { seq: number }).seq);
    const own = [order, ...[...visits, ...studies].map((r) => (r as { id: string }).id)];
    const { accession } = orders[0] as { accession: string };
    const factColumns = Object.keys(facts[0]!).filter((column) => column !== 'seq').map((column) => `"${column}"`).join(', ');
    for (let i = 0; i < times; i++) {
      const ids = new Map(own.map((id) => [id, randomUUID()]));
      const like = (rows: object[]) => own.reduce((text, id) => text.replaceAll(id, ids.get(id)!), JSON.stringify(rows)).replaceAll(accession, `${accession}-${i}`);
      await owner.query('INSERT INTO orders SELECT * FROM jsonb_populate_recordset(NULL::orders, $1)', [like(orders)]);
      await owner.query(`INSERT INTO fact (${factColumns}) SELECT ${factColumns} FROM jsonb_populate_recordset(NULL::fact, $1)`, [like(facts)]);
      await owner.query('INSERT INTO visit SELECT * FROM jsonb_populate_recordset(NULL::visit, $1)', [like(visits)]);
      await owner.query('INSERT INTO study SELECT * FROM jsonb_populate_recordset(NULL::study, $1)', [like(studies)]);
    }
  } finally {
    await owner.end();
  }
}
