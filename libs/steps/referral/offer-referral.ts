import { randomUUID } from 'node:crypto';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { say } from '../messages/say.js';
import { dayWords } from '../record/day-words.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** From here on both practices see the order, and nobody else does. */
export const offerReferral = useCase('offerReferral', async ({ tx, order, evaluation }, _on, input) => {
  if (!input.ownerAgreed) throw badInput('ownerAgreed', 'Ask the owner first: the other practice would see the whole order.');
  const [to] = await tx.$queryRaw<{ name: string; email: string }[]>`SELECT name, email FROM app.practice_directory() WHERE id = ${input.to}::uuid AND id <> ${order.practice}::uuid`;
  if (!to) throw badInput('to', 'This practice does not take part in the scheme.');
  await tx.$executeRaw`SELECT app.share_order(${order.id}::uuid, ${input.to}::uuid, 'referral')`;
  const referral = randomUUID();
  const studies = Object.values(evaluation.studies).map((s) => findProtocol(s.protocol, s.version)?.deskName ?? s.protocol);
  await say(tx, { once: `referral:${referral}`, kind: 'referral', template: 'referral', order: order.id, practice: order.practice, to: { name: to.name, email: to.email }, subject: referral, data: { accession: order.accession, studies, expires: dayWords(input.expires) } });
  return [{ type: 'referralOffered', referral, to: input.to, expires: input.expires, ownerAgreed: true, detail: { name: to.name } }];
});
