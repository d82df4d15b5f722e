import { useCase } from '../record/use-case.js';

/** One action: the pathway silences mail, ends what can end and, for a death in our care, freezes the record. */
export const recordDeath = useCase('recordDeath', async ({ tx, order }, _on, input) => {
  await tx.dog.updateMany({ where: { id: order.dog }, data: { died: new Date(`${input.day}T00:00:00Z`) } });
  return [{ type: 'dogDied', day: input.day, inCare: input.inCare, cause: input.cause }];
});
