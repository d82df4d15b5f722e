import { NEAR } from './likeness-sql.js';

const STANDS = `r.role IN ('owner', 'coOwner') AND r.valid_until IS NULL`;

/**
 * Dogs by what was typed with their scores, all dogs for an empty text: name and call name, number, then the owner's name or
 * phone. $4 text, $5 digits or null. Whoever reads them joins `dog`, whose policies have the last word.
 */
export const DOG_HITS = `near AS (
  SELECT h.dog AS id, max(h.score) AS score FROM app.dog_hits($4, $5) h WHERE NOT EXISTS (SELECT 1 FROM dog_merge x WHERE x.gone_id = h.dog) GROUP BY h.dog HAVING max(h.score) >= ${NEAR}
)`;

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
