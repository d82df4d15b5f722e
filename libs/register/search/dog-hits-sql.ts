import { likeness, NEAR, phoneHas } from './likeness-sql.js';

/** Dogs whose practice this is, and dogs of orders that were referred to it. $1 practice. */
const MINE = `mine AS (
  SELECT d.id, d.call_name, d.animal_id FROM dog d WHERE d.practice_id = $1::uuid
  UNION
  SELECT d.id, d.call_name, d.animal_id FROM order_access a JOIN orders o ON o.id = a.order_id JOIN dog d ON d.id = o.dog_id WHERE a.practice_id = $1::uuid AND a.why <> 'home'
)`;

const STANDS = `r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL`;

/** Dogs by what was typed, nearest first: name and call name, number, then the owner's name or phone. $4 text, $5 digits or null. */
export const DOG_HITS = `${MINE}, hit AS (
  SELECT m.id, CASE WHEN $4 = '' THEN 1 WHEN m.animal_id = upper($4) THEN 3 ELSE ${likeness('m.call_name', '$4')} END AS score FROM mine m
  UNION ALL
  SELECT m.id, ${likeness('n.name', '$4')} FROM mine m JOIN dog_name n ON n.dog_id = m.id
  UNION ALL
  SELECT m.id, 2 FROM mine m JOIN dog_identifier i ON i.dog_id = m.id WHERE strpos(i.value, COALESCE($5::text, upper($4))) > 0 AND $4 <> ''
  UNION ALL
  SELECT m.id, CASE WHEN $5::text IS NOT NULL AND ${phoneHas('p.phone', '$5')} THEN 2 ELSE 0.9 * (${likeness('p.name', '$4')}) END
  FROM mine m JOIN dog_role r ON r.dog_id = m.id AND ${STANDS} JOIN person p ON p.id = r.person_id WHERE $4 <> ''
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
