import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';

/** Every order of an erased person says so: one of them was erased through another order, or came back with a restore. */
export async function noteErased(deps: StepDeps, person: string): Promise<void> {
  const orders = await deps.db.system('note an erasure', (tx) => tx.$queryRaw<{ id: string }[]>`
    SELECT o.id FROM orders o JOIN person p ON p.id = ${person}::uuid WHERE p.erased_at IS NOT NULL AND o.practice_id = p.practice_id
      AND EXISTS (SELECT 1 FROM dog_role r WHERE r.dog_id = o.dog_id AND r.person_id = p.id)
      AND NOT EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.type = 'personErased' AND f.body->>'person' = p.id::text) ORDER BY o.id`);
  for (const { id } of orders) {
    await deps.db.system('note an erasure', async (tx) => {
      const order = (await lockOrder(tx, id))!;
      const work = workOn(tx, deps.clock.now(), queueActor(order.practice), order, deps.publicUrl);
      if (!work.facts('personErased').some((f) => f.person === person)) await append(work, [{ type: 'personErased', person }], { action: 'noteErased' });
    });
  }
}
