import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import { workOn } from '../record/work.js';
import type { StepDeps } from '../record/step-deps.js';
import { closeDelivery, type Delivery, type DeliveryState } from './delivery.js';

/** What became of a sending, as a fact of its order; said once as long as it stays the same. `closes` ends the sending with it. */
export async function noteSending(deps: StepDeps, delivery: Delivery, outcome: 'handedOver' | 'failed' | undefined, words: string, closes?: DeliveryState): Promise<void> {
  const { send, study } = delivery;
  await deps.db.system('note an outcome', async (tx) => {
    const now = deps.clock.now();
    const order = await lockOrder(tx, delivery.order);
    if (closes && (await closeDelivery(tx, send, now, closes, outcome === 'failed' ? words : null)) === 0) return;
    if (!order || !outcome || delivery.note) return; // a note is no sending of films
    const work = workOn(tx, now, queueActor(order.practice), order, deps.publicUrl);
    const said = work.facts('sendOutcome').filter((f) => f.send === send).at(-1);
    if (said?.outcome !== outcome) await append(work, [{ type: 'sendOutcome', study, send, outcome, detail: { words } }], { action: 'noteOutcome' });
  });
}
