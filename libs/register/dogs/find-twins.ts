import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { Twins } from '#libs/contracts/people';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { shown } from '../dog-of-row.js';
import { DOG_LINE, type DogLine } from '../search/dog-hits-sql.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';
import { TWIN_PAIRS } from './twin-sql.js';

interface TwinLine extends DogLine { animalId: string; orders: number; number: DogLine['number'] }

const PAGE = 50;

/** $4 rows to skip, $5 rows. */
const FOUND = `WITH pair AS (SELECT * FROM (${TWIN_PAIRS}) t ORDER BY why DESC, a, b LIMIT $5 OFFSET $4), ${viewed('findTwins', `jsonb_build_object('pairs', (SELECT count(*) FROM pair))`, 'EXISTS (SELECT 1 FROM pair)')}
SELECT p.why, (SELECT jsonb_agg(to_jsonb(l) ORDER BY l.created_at) FROM (SELECT ${DOG_LINE}, d.animal_id AS "animalId", d.created_at, (SELECT count(*)::int FROM orders o WHERE o.dog_id = d.id) AS orders FROM dog d WHERE d.id IN (p.a, p.b)) l) AS dogs
FROM pair p ORDER BY p.why DESC, p.a, p.b`;

/** Entries of this register that look like one dog: the same number, or the same name and birth. */
export async function findTwins(deps: RegisterDeps, actor: Actor, page = 1, perPage = PAGE): Promise<Twins> {
  staffOnly(actor);
  const rows = await deps.db.read<{ why: 'number' | 'nameAndBirth'; dogs: TwinLine[] }>({ practice: actor.practice }, FOUND, [...viewer(actor), (page - 1) * perPage, perPage + 1]);
  return {
    more: rows.length > perPage,
    rows: rows.slice(0, perPage).map(({ why, dogs }) => ({
      why,
      dogs: dogs.map((d) => ({ id: d.id, animalId: d.animalId, name: d.name, callName: d.callName, breed: d.breed, sex: d.sex, born: d.born, transponder: d.number ? shown(d.number.kind, d.number.value) : '', owner: d.owner?.name ?? '', orders: d.orders })),
    })),
  };
}

/** A pair a row. */
export async function twinsAsCsv(deps: RegisterDeps, actor: Actor): Promise<string> {
  const { rows, more } = await findTwins(deps, actor, 1, MOST_ROWS);
  const of = (n: string) => ['Animal number', 'Name', 'Breed', 'Sex', 'Born', 'Number', 'Owner', 'Orders'].map((head) => `${head} (${n})`);
  return csv(['Alike by', ...of('first'), ...of('second')], rows.map(({ why, dogs }) => [why === 'number' ? 'number' : 'name and birth', ...dogs.flatMap((d) => [d.animalId, d.name, d.breed, d.sex, d.born, d.transponder, d.owner, d.orders])]), more);
}
