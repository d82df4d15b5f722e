import { randomUUID } from 'node:crypto';
import { useCase } from '../record/use-case.js';

/** The result stays with the order; the buyer is written down beside the seller, who stays in the record. */
export const recordTransfer = useCase('recordTransfer', async ({ tx, order }, _on, input) => {
  const day = new Date(`${input.day}T00:00:00Z`);
  const buyer = randomUUID();
  await tx.person.create({ data: { id: buyer, practiceId: order.practice, name: input.buyerName, email: input.buyerEmail ?? null, channel: input.buyerEmail ? 'mail' : 'post' } });
  await tx.dogRole.updateMany({ where: { dogId: order.dog, role: 'owner', until: null }, data: { until: day } });
  await tx.dogRole.create({ data: { practiceId: order.practice, dogId: order.dog, personId: buyer, role: 'owner', from: day } });
  return [{ type: 'dogTransferred', day: input.day, buyer, detail: { name: input.buyerName } }];
});
