import { csv, MOST_ROWS } from '#libs/contracts/csv';
import type { Person } from '#libs/contracts/register';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { badInput } from '../refusal.js';
import { asked } from '../search/asked.js';
import { NEAR, phoneHas } from '../search/likeness-sql.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';
import { PERSON, personOfRow } from './person-of-row.js';

const PAGE = 50;

/** $4 text, $5 digits or null, $6 rows to skip, $7 rows. One row more than a page tells whether there is another. */
const LIST = `WITH scored AS (
  SELECT p.*, CASE WHEN $4 = '' THEN 1 WHEN $5::text IS NOT NULL AND ${phoneHas('p.phone', '$5')} THEN 2 WHEN strpos(lower(p.email), lower($4)) > 0 THEN 1.5 ELSE app.likeness(p.name, $4) END AS score
  FROM person p WHERE p.practice_id = $1::uuid AND p.erased_at IS NULL
), page AS (
  SELECT ${PERSON}, p.score FROM scored p WHERE p.score >= ${NEAR} ORDER BY p.score DESC, p.name, p.id LIMIT $7 OFFSET $6
), ${viewed('listPeople', `jsonb_build_object('people', (SELECT jsonb_agg(id) FROM page))`, 'EXISTS (SELECT 1 FROM page)')}
SELECT id, name, "latinName", email, phone, address, channel, language FROM page ORDER BY score DESC, name, id`;

/** By name with a slip of typing, by phone or by mail address; the nearest first. */
export async function listPeople(deps: RegisterDeps, actor: Actor, { q, page = 1 }: { q?: string; page?: number } = {}, perPage = PAGE): Promise<{ rows: Person[]; more: boolean }> {
  staffOnly(actor);
  if (!Number.isInteger(page) || page < 1 || page > 10_000) throw badInput('page', t('A page is a whole number from 1 on.'));
  const { text, digits } = asked(q);
  const rows = await deps.db.read<Person>({ practice: actor.practice }, LIST, [...viewer(actor), text, digits, (page - 1) * perPage, perPage + 1]);
  return { rows: rows.slice(0, perPage).map(personOfRow), more: rows.length > perPage };
}

/** The same list as a file for a spreadsheet. */
export async function peopleAsCsv(deps: RegisterDeps, actor: Actor, { q }: { q?: string }): Promise<string> {
  const { rows, more } = await listPeople(deps, actor, { ...(q && { q }) }, MOST_ROWS);
  return csv(['Name', 'Mail', 'Phone', 'Address', 'Told by', 'Language'], rows.map((r) => [r.name, r.email ?? null, r.phone ?? null, r.address ?? null, r.channel, r.language]), more);
}
