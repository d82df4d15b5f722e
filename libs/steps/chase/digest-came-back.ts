import type { Tx } from '#libs/platform/database/db';
import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';

/** A reminder that came back reminded nobody: each study that it named has its cause, and the manager is told of it. */
export async function digestCameBack(tx: Tx, deps: StepDeps, message: string): Promise<void> {
  const named = await tx.$queryRaw<{ order: string; study: string }[]>`
    SELECT f.order_id AS "order", f.body ->> 'study' AS study FROM message m JOIN fact f ON f.type = 'chaseSent' AND f.body ->> 'digest' = m.once_key
    WHERE m.id = ${message}::uuid ORDER BY 1, 2`;
  for (const { order, study } of named) {
    const record = await lockOrder(tx, order);
    if (!record) continue;
    const work = workOn(tx, deps.clock.now(), queueActor(record.practice), record, deps.publicUrl);
    const chase = work.evaluation.studies[study]?.chase;
    if (chase && chase.cause !== 'bounced') await append(work, [{ type: 'causeFound', study, cause: 'bounced' }], { action: 'noteOutcome' });
  }
}
