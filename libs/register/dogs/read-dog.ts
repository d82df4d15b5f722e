import type { Dog } from '#libs/contracts/register';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { dogOfRow, type DogRow } from '../dog-of-row.js';
import { DOG } from '../dog-sql.js';
import { knownId } from '../parse-input.js';
import { notFound } from '../refusal.js';
import { viewed, viewer } from '../viewed-sql.js';
import { staffOnly } from '../who-may.js';

const SEEN = `WITH ${viewed('viewDog', `jsonb_build_object('dogs', jsonb_build_array($4::uuid))`, 'EXISTS (SELECT 1 FROM dog WHERE id = $4::uuid)')}
  SELECT ${DOG} AS dog FROM dog d WHERE d.id = COALESCE((SELECT m.kept_id FROM dog_merge m WHERE m.gone_id = $4::uuid), $4::uuid)`;

/** A dog of this practice, or one that was referred to it; under the address of an entry that was merged, the dog itself. */
export async function readDog(deps: RegisterDeps, actor: Actor, dog: string): Promise<Dog> {
  staffOnly(actor);
  const [row] = await deps.db.read<{ dog: DogRow }>({ practice: actor.practice }, SEEN, [...viewer(actor), knownId(dog)]);
  if (!row) throw notFound();
  return dogOfRow(row.dog);
}
