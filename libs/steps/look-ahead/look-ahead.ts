import { addDays } from '#libs/pathway/days';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { StepDeps } from '../record/step-deps.js';

/** Our own choice: long enough to find another operator, centre or day. */
const DAYS = 14;

/** Every night: orders whose visit is near, or whose films may still be taken. Each is looked at in a transaction of its own. */
export async function lookAhead(deps: StepDeps): Promise<number> {
  const today = deps.clock.now().toISOString().slice(0, 10);
  return deps.db.system('look ahead', async (tx) => {
    const near = await tx.$queryRaw<{ id: string }[]>`
      SELECT DISTINCT o.id FROM orders o JOIN visit v ON v.order_id = o.id
      WHERE NOT o.closed AND v.open AND v.day BETWEEN ${new Date(`${addDays(today, -1)}T00:00:00Z`)}::date AND ${new Date(`${addDays(today, DAYS)}T00:00:00Z`)}::date`;
    for (const { id } of near) await addToOutbox(tx, 'check-ahead', { order: id }, { dedupe: id });
    return near.length;
  });
}
