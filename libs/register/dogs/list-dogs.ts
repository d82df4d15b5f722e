import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { DogListRow } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { shown } from '../dog-of-row.js';
import { badInput } from '../refusal.js';
import { asked } from '../search/asked.js';
import { DOG_HITS, DOG_LINE, type DogLine } from '../search/dog-hits-sql.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';

const PAGE = 50;

/** $4 text, $5 digits or null, $6 rows to skip, $7 rows. One row more than a page tells whether there is another. */
const LIST = `WITH ${DOG_HITS}, page AS (
  SELECT d.id, near.score, d.call_name FROM near JOIN dog d ON d.id = near.id ORDER BY near.score DESC, lower(d.call_name), d.id LIMIT $7 OFFSET $6
), ${viewed('listDogs', `jsonb_build_object('dogs', (SELECT jsonb_agg(id) FROM page))`, 'EXISTS (SELECT 1 FROM page)')}
SELECT ${DOG_LINE} FROM page JOIN dog d ON d.id = page.id ORDER BY page.score DESC, lower(d.call_name), d.id`;

/** A page of dogs, counted from 1; without words by call name, else the nearest first. */
export async function listDogs(deps: RegisterDeps, actor: Actor, { q, page = 1 }: { q?: string; page?: number } = {}, perPage = PAGE): Promise<{ rows: DogListRow[]; more: boolean }> {
  staffOnly(actor);
  if (!Number.isInteger(page) || page < 1 || page > 10_000) throw badInput('page', t('A page is a whole number from 1 on.'));
  const { text, digits } = asked(q);
  const rows = await deps.db.read<DogLine>({ practice: actor.practice }, LIST, [...viewer(actor), text, digits, (page - 1) * perPage, perPage + 1]);
  return { rows: rows.slice(0, perPage).map(rowOf), more: rows.length > perPage };
}

/** The same list as a file for a spreadsheet. */
export async function dogsAsCsv(deps: RegisterDeps, actor: Actor, { q }: { q?: string }): Promise<string> {
  const { rows, more } = await listDogs(deps, actor, { ...(q && { q }) }, MOST_ROWS);
  return csv(['Dog', 'Registered name', 'Breed', 'Sex', 'Born', 'Number', 'Owner', 'Phone'], rows.map((r) => [r.callName, r.name, r.breed, r.sex, r.born, r.transponder, r.owner, r.phone]), more);
}

const rowOf = ({ number, owner, ...dog }: DogLine): DogListRow => ({ ...dog, transponder: number ? shown(number.kind, number.value) : '', owner: owner?.name ?? '', phone: owner?.phone ?? '' });
