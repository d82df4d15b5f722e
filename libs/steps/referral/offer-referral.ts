import { randomUUID } from 'node:crypto';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** From here on both practices see the order, and nobody else does. */
export const offerReferral = useCase('offerReferral', async ({ tx, order }, _on, input) => {
  if (!input.ownerAgreed) throw badInput('ownerAgreed', 'Ask the owner first: the other practice would see the whole order.');
  const [to] = await tx.$queryRaw<{ name: string }[]>`SELECT name FROM app.practice_directory() WHERE id = ${input.to}::uuid AND id <> ${order.practice}::uuid`;
  if (!to) throw badInput('to', 'This practice does not take part in the scheme.');
  await tx.$executeRaw`SELECT app.share_order(${order.id}::uuid, ${input.to}::uuid, 'referral')`;
  return [{ type: 'referralOffered', referral: randomUUID(), to: input.to, expires: input.expires, ownerAgreed: true, detail: { name: to.name } }];
});
