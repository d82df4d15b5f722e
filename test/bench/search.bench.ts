import pg from 'pg';
import type { BenchContext } from '../support/bench.js';
import { openBench } from './support/open-bench.js';
import { inTurns } from './support/load.js';

const PRACTICES = 100;
/** A million dogs if this machine fills them in within minutes, else as many as it showed that it can. */
const [FIRST, ALL] = [200_000, 1_000_000];
const PATIENCE_MS = 4 * 60_000;
const TABLES = ['person', 'dog', 'dog_name', 'dog_identifier', 'dog_role'];
/** What is typed: a name as it is, with a slip, by half, and a number. */
const TYPED = ['Nettle', 'Netle', 'Net', '0410000'];

/** Invented dogs, each with a call name, a registered name, a number and an owner, over a hundred practices of one scheme. */
async function fill(owner: pg.Client, from: number, to: number): Promise<void> {
  await owner.query(`CREATE TEMP TABLE many AS SELECT g, gen_random_uuid() AS dog, gen_random_uuid() AS person, h.id AS practice,
    (ARRAY['Ash', 'Birch', 'Nettle', 'Rowan', 'Tarn', 'Heron', 'Moss', 'Fern'])[1 + (g / ${PRACTICES}) % 8] || ' ' || to_hex(g) AS name FROM generate_series(${from}, ${to}) g JOIN home h ON h.n = g % ${PRACTICES}`);
  await owner.query(`INSERT INTO person (id, practice_id, name, phone, channel, language) SELECT person, practice, 'Owner ' || to_hex(g), lpad(g::text, 10, '0'), 'none', 'en' FROM many`);
  await owner.query(`INSERT INTO dog (id, practice_id, animal_id, call_name, breed, sex, neutered, born_earliest, born_latest, born_precision) SELECT dog, practice, 'B' || g, name, 'Aldra Water Hound', 'male', false, '2024-01-01', '2024-01-01', 'day' FROM many`);
  await owner.query(`INSERT INTO dog_name (practice_id, dog_id, name, valid_from) SELECT practice, dog, name || ' of the Long Reach', '2024-01-01' FROM many`);
  await owner.query(`INSERT INTO dog_identifier (practice_id, dog_id, kind, value, how, valid_from) SELECT practice, dog, 'transponder', (999000000000000 + g)::text, 'scanned', '2024-01-01' FROM many`);
  await owner.query(`INSERT INTO dog_role (practice_id, dog_id, person_id, role, valid_from) SELECT practice, dog, person, 'owner', '2024-01-01' FROM many`);
  await owner.query('DROP TABLE many');
}

/** Without keys to other tables being asked after and without indexes, which are built once all is in. Answers how many dogs. */
async function fillAll(owner: pg.Client, practice: string): Promise<number> {
  await owner.query(`INSERT INTO practice SELECT (jsonb_populate_record(p, jsonb_build_object('id', gen_random_uuid(), 'name', 'Practice ' || g, 'email', 'p' || g || '@bench.example', 'letters', chr(90 - g / 26) || chr(65 + g % 26)))).*
    FROM practice p, generate_series(2, ${PRACTICES}) g WHERE p.id = $1`, [practice]);
  await owner.query(`SET session_replication_role = replica; SET synchronous_commit = off; SET maintenance_work_mem = '256MB'`);
  await owner.query(`CREATE TEMP TABLE home AS SELECT row_number() OVER (ORDER BY id = '${practice}' DESC, id) - 1 AS n, id FROM practice LIMIT ${PRACTICES}`);
  const { rows: indexes } = await owner.query<{ name: string; makes: string }>(`SELECT indexrelid::regclass::text AS name, pg_get_indexdef(indexrelid) AS makes FROM pg_index i
    WHERE indrelid = ANY ($1::text[]::regclass[]) AND NOT EXISTS (SELECT 1 FROM pg_constraint c WHERE c.conindid = i.indexrelid)`, [TABLES]);
  for (const { name } of indexes) await owner.query(`DROP INDEX ${name}`);
  const began = performance.now();
  await fill(owner, 1, FIRST);
  const dogs = (performance.now() - began) * (ALL / FIRST) < PATIENCE_MS ? ALL : FIRST;
  if (dogs > FIRST) await fill(owner, FIRST + 1, dogs);
  for (const { makes } of indexes) await owner.query(makes);
  await owner.query('RESET session_replication_role; ANALYZE');
  return dogs;
}

/** The shortest statement that finds the same dogs by name or number, with the practice as its only fence. */
const BARE = `SELECT d.id, d.call_name FROM dog d WHERE d.practice_id = $1 AND (similarity(d.call_name, $2) >= 0.35 OR strpos(lower(d.call_name), lower($2)) > 0)
  UNION SELECT i.dog_id, i.value FROM dog_identifier i WHERE i.practice_id = $1 AND strpos(i.value, $2) > 0 LIMIT 8`;

export async function run({ row }: BenchContext): Promise<void> {
  const ground = await openBench(['Nettle']);
  const owner = new pg.Client(ground.database.ownerUrl);
  await owner.connect();
  try {
    const { rows: [home] } = await owner.query<{ practice_id: string }>('SELECT practice_id FROM orders LIMIT 1');
    const began = performance.now();
    const dogs = await fillAll(owner, home!.practice_id);
    row(`${dogs.toLocaleString('en')} dogs of ${PRACTICES} practices filled in`, (performance.now() - began) / 1000, 's');
    const { cookie } = await ground.signIn('marit@weirside.example');
    const ask = async (q: string) => {
      const reply = await fetch(`${ground.url}/api/search?q=${encodeURIComponent(q)}`, { headers: { cookie } });
      if (reply.status !== 200) throw new Error(`Searching answered ${reply.status}.`);
      return reply.text();
    };
    for (const typed of TYPED) {
      if (!/"dogs":\[\{/.test(await ask(typed))) throw new Error(`No dog was found for “${typed}”.`);
      const { ours, bare } = await inTurns(() => ask(typed), () => owner.query({ name: 'bare', text: BARE, values: [home!.practice_id, typed] }), { each: 3, rounds: 3 });
      row(`search for “${typed}” over ${dogs.toLocaleString('en')} dogs ÷ bare SQL`, ours, 'searches/s', ours / bare);
    }
  } finally {
    await owner.end();
    await ground.close();
  }
}
