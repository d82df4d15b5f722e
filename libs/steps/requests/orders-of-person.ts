import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../record/actor.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn, type Work } from '../record/work.js';

/** Every order of the practice on a dog that this person is or was somebody to, each locked; always in the same sequence, so that two who lock do not wait for each other. */
export async function ordersOfPerson(tx: Tx, deps: StepDeps, actor: Actor, person: string): Promise<Work[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT o.id FROM orders o WHERE o.practice_id = ${actor.practice}::uuid AND EXISTS (SELECT 1 FROM dog_role r WHERE r.dog_id = o.dog_id AND r.person_id = ${person}::uuid) ORDER BY o.id`;
  const works: Work[] = [];
  for (const { id } of rows) works.push(workOn(tx, deps.clock.now(), actor, (await lockOrder(tx, id))!, deps.publicUrl));
  return works;
}
