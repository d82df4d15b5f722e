import { likeness, NEAR, phoneHas } from './likeness-sql.js';

const STANDS = `r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL`;

/** Dogs of orders that were referred to this practice. $1 practice. */
const SHARED = `shared AS MATERIALIZED (SELECT DISTINCT o.dog_id AS id FROM order_access a JOIN orders o ON o.id = a.order_id WHERE a.practice_id = $1::uuid AND a.why <> 'home')`;

/**
 * Rows of this practice, or of those dogs. The policies would sort out the rest as well, but by asking
 * about each row of every other practice; this is asked first, because it tells nothing.
 */
const ours = (table: string, dog: string): string => `(${table}.practice_id = $1::uuid OR ${table}.${dog} = ANY(ARRAY(SELECT id FROM shared)))`;

/** Dogs by what was typed, nearest first: name and call name, number, then the owner's name or phone. $4 text, $5 digits or null. */
export const DOG_HITS = `${SHARED}, mine AS (
  SELECT d.id, d.call_name, d.animal_id FROM dog d WHERE ${ours('d', 'id')} AND NOT EXISTS (SELECT 1 FROM dog_merge x WHERE x.gone_id = d.id)
), holder AS (
  SELECT r.dog_id, r.person_id FROM dog_role r WHERE ${ours('r', 'dog_id')} AND r.dog_id IN (SELECT id FROM mine) AND ${STANDS} AND $4 <> ''
), hit AS (
  SELECT m.id, CASE WHEN $4 = '' THEN 1 WHEN m.animal_id = upper($4) THEN 3 WHEN $5::text IS NOT NULL THEN 0 ELSE ${likeness('m.call_name', '$4')} END AS score FROM mine m
  UNION ALL
  SELECT x.kept_id, 3 FROM dog_merge x JOIN mine m ON m.id = x.kept_id WHERE x.animal_id = upper($4)
  UNION ALL
  SELECT n.dog_id, ${likeness('n.name', '$4')} FROM dog_name n WHERE $4 <> '' AND $5::text IS NULL AND ${ours('n', 'dog_id')} AND n.dog_id IN (SELECT id FROM mine)
  UNION ALL
  SELECT i.dog_id, 2 FROM dog_identifier i WHERE $4 <> '' AND ${ours('i', 'dog_id')} AND i.dog_id IN (SELECT id FROM mine) AND strpos(i.value, COALESCE($5::text, upper($4))) > 0
  UNION ALL
  SELECT h.dog_id, CASE WHEN $5::text IS NULL THEN 0.9 * (${likeness('p.name', '$4')}) WHEN ${phoneHas('p.phone', '$5')} THEN 2 ELSE 0 END
  FROM holder h JOIN person p ON p.id = h.person_id WHERE p.practice_id = $1::uuid OR p.id = ANY(ARRAY(SELECT person_id FROM holder JOIN shared ON shared.id = holder.dog_id))
), near AS (SELECT id, max(score) AS score FROM hit GROUP BY id HAVING max(score) >= ${NEAR})`;

/** How a dog stands in a list. Expects the alias `d`. */
export const DOG_LINE = `d.id, d.call_name AS "callName", d.breed, d.sex, d.born_latest::text AS born,
  COALESCE((SELECT n.name FROM dog_name n WHERE n.dog_id = d.id ORDER BY n.valid_from DESC LIMIT 1), d.call_name) AS name,
  (SELECT jsonb_build_object('kind', i.kind, 'value', i.value) FROM dog_identifier i WHERE i.dog_id = d.id AND i.valid_until IS NULL AND i.kind <> 'none' ORDER BY i.kind = 'transponder' DESC, i.valid_from DESC LIMIT 1) AS number,
  (SELECT jsonb_build_object('name', p.name, 'phone', p.phone) FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id AND ${STANDS} ORDER BY r.role = 'owner' DESC, r.valid_from DESC LIMIT 1) AS owner`;

export interface DogLine {
  id: string; callName: string; name: string; breed: string; sex: 'male' | 'female'; born: string;
  number: { kind: string; value: string } | null;
  owner: { name: string; phone: string | null } | null;
}
