import type { Person } from '#libs/contracts/register';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { asked } from '../search/asked.js';
import { likeness, NEAR, phoneHas } from '../search/likeness-sql.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';
import { PERSON, personOfRow } from './person-of-row.js';

/** $4 text, $5 digits or null. */
const LIST = `WITH scored AS (
  SELECT p.*, CASE WHEN $4 = '' THEN 1 WHEN $5::text IS NOT NULL AND ${phoneHas('p.phone', '$5')} THEN 2 WHEN strpos(lower(p.email), lower($4)) > 0 THEN 1.5 ELSE ${likeness('p.name', '$4')} END AS score
  FROM person p WHERE p.practice_id = $1::uuid AND p.erased_at IS NULL
), page AS (
  SELECT ${PERSON}, p.score FROM scored p WHERE p.score >= ${NEAR} ORDER BY p.score DESC, p.name, p.id LIMIT 20
), ${viewed('listPeople', `jsonb_build_object('people', (SELECT jsonb_agg(id) FROM page))`, 'EXISTS (SELECT 1 FROM page)')}
SELECT id, name, "latinName", email, phone, address, channel, language FROM page ORDER BY score DESC, name, id`;

/** By name with a slip of typing, by phone or by mail address; the nearest first. */
export async function listPeople(deps: RegisterDeps, actor: Actor, { q }: { q?: string } = {}): Promise<{ rows: Person[] }> {
  staffOnly(actor);
  const { text, digits } = asked(q);
  const rows = await deps.db.read<Person>({ practice: actor.practice }, LIST, [...viewer(actor), text, digits]);
  return { rows: rows.map(personOfRow) };
}
