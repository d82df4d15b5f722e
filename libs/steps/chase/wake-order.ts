import { queueActor } from '../record/actor.js';
import { lockOrder } from '../record/order-record.js';
import { storeProjection } from '../record/projection.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';
import { sayReferralExpired } from '../referral/say-referral-expired.js';

/** Time alone changes holds and clocks: reads the order anew and stores what lists and sweeps query. No fact is written. */
export async function wakeOrder(deps: StepDeps, order: string): Promise<void> {
  await deps.db.system('wake an order', async (tx) => {
    const record = await lockOrder(tx, order);
    if (!record) return;
    const work = workOn(tx, deps.clock.now(), queueActor(record.practice), record, deps.publicUrl);
    await storeProjection(work, work.evaluation);
    await sayReferralExpired(work);
  });
}
