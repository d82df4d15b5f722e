import type { StepDeps } from '../record/step-deps.js';
import { readOrder } from '../record/order-record.js';

/** A practice that declined, or from which the offer was taken back, sees the order no longer; asked and answered anew, it does. */
export async function endSharing(deps: StepDeps, order: string, practice: string): Promise<void> {
  await deps.db.system('end the sharing of an order', async (tx) => {
    await tx.$executeRaw`SELECT 1 FROM orders WHERE id = ${order}::uuid FOR UPDATE`;
    const record = await readOrder(tx, order);
    if (!record) return;
    const offers = record.facts.filter((f) => f.type === 'referralOffered').filter((f) => f.to === practice);
    const closed = new Set(record.facts.filter((f) => f.type === 'referralAnswered').filter((f) => f.answer !== 'accepted').map((f) => f.referral));
    if (offers.some((offer) => !closed.has(offer.referral))) return;
    await tx.orderAccess.deleteMany({ where: { orderId: order, practiceId: practice, why: 'referral' } });
  });
}
