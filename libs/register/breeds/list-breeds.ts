import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { staffOnly } from '../who-may.js';

/** Suggestions, never a closed list: the scheme's breeds and those of the practice's own dogs, one spelling each. */
const BREEDS = `SELECT DISTINCT ON (lower(breed)) breed FROM (
  SELECT jsonb_array_elements_text(COALESCE(breeds->'names', '[]')) AS breed, 1 AS place FROM scheme
  UNION ALL SELECT DISTINCT breed, 2 FROM dog WHERE practice_id = $1::uuid
) AS known ORDER BY lower(breed), place`;

export async function listBreeds(deps: RegisterDeps, actor: Actor): Promise<string[]> {
  staffOnly(actor);
  return (await deps.db.read<{ breed: string }>({ practice: actor.practice }, BREEDS, [actor.practice])).map((row) => row.breed);
}
