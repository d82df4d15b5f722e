import pg from 'pg';
import { cloneDatabase } from '../support/database.js';
import type { BenchContext } from '../support/bench.js';

const RESULTS = 1_000_000;
const ROUNDS = 3;

/** Invented results: a hundred breeds of ten thousand dogs, values spread as a sum of uniforms. */
const FILL = `INSERT INTO statistics_study
  SELECT gen_random_uuid(), gen_random_uuid(), gen_random_uuid(), '00000000-0000-4000-8000-000000000000', 'hipLaxity', 'hipLaxity@1+2', 'breed ' || i % 100, 'months12to23', 2010 + i % 15, 2012 + i % 15,
    CASE WHEN i % 20 = 0 THEN 'litter' ELSE 'chosen' END, false, now(), gen_random_uuid(), true, v, v, GREATEST(0, v - 5)
  FROM (SELECT i, 15 + (20 * (random() + random() + random()))::int AS v FROM generate_series(1, ${RESULTS}) AS i) x`;

/** What a rebuild comes down to: rows grouped and counted, once, into a table. */
const BARE = `CREATE TEMPORARY TABLE bare AS SELECT scheme_id, pool, breed, age_band, born_year, sender, measure, value, count(*) AS n
  FROM counting_row r CROSS JOIN LATERAL (VALUES ('dog', r.dog_value), ('left', r.left_value), ('right', r.right_value)) AS m(measure, value) GROUP BY 1, 2, 3, 4, 5, 6, 7, 8`;

export async function run({ row }: BenchContext): Promise<void> {
  const database = await cloneDatabase();
  const owner = new pg.Client(database.ownerUrl);
  await owner.connect();
  try {
    await owner.query('ALTER TABLE statistics_study DISABLE TRIGGER USER');
    await owner.query(FILL);
    await owner.query('ALTER TABLE statistics_study ENABLE TRIGGER USER');
    await owner.query('VACUUM ANALYZE statistics_study');
    const seconds = async (...statements: string[]): Promise<number> => {
      const started = performance.now();
      for (const sql of statements) await owner.query(sql);
      return (performance.now() - started) / 1000;
    };
    const rows = await seconds('SELECT app.rebuild_counts()');
    await owner.query('VACUUM ANALYZE counting_row');
    let [ours, bare] = [Infinity, Infinity];
    // In turn, so that neither has the warmer cache, and the best of each: the machine has other things to do.
    for (let i = 0; i < ROUNDS; i++) {
      bare = Math.min(bare, await seconds(BARE));
      await owner.query('DROP TABLE bare');
      ours = Math.min(ours, await seconds('SELECT app.rebuild_cells()'));
    }
    const cells = await owner.query<{ n: number }>("SELECT sum(n)::int AS n FROM counting_cell WHERE measure = 'dog'");
    if (cells.rows[0]!.n !== RESULTS) throw new Error(`The histograms hold ${cells.rows[0]!.n} dogs of ${RESULTS}.`);
    row('rebuilding the histograms of a million results ÷ bare SQL', ours, 's', ours / bare);
    row('choosing each dog’s reading first, rows and histograms', rows, 's', rows / bare);
  } finally {
    await owner.end();
    await database.drop();
  }
}
