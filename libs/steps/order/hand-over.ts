import { say } from '../messages/say.js';
import { sayToOwners } from '../messages/say-to-owner.js';
import { homeOnly } from '../record/home-only.js';
import { readOrder } from '../record/order-record.js';
import { badInput, notFound } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** One order goes to another practice for good, with its dog and the people around it, after its owner has said yes. */
export const handOver = useCase('handOver', async (work, _on, input) => {
  const { tx, order } = work;
  homeOnly(work, 'Handing over');
  if (!input.ownerAgreed) throw badInput('ownerAgreed', 'Ask the owner first: the other practice gets the whole record. An owner who says no takes the papers along.');
  const [to] = await tx.$queryRaw<{ name: string; email: string; phone?: string }[]>`SELECT name, email FROM app.practice_directory() WHERE id = ${input.to}::uuid AND id <> ${order.practice}::uuid`;
  if (!to) throw badInput('to', 'This practice does not take part in the scheme.');
  const from = order.practice;
  const { name: old } = order.practices[from]!;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  // Told before the people change their register, by the practice that they know.
  await sayToOwners(work, { once: `handed-over:${order.id}:${from}`, kind: 'handedOver', template: 'newPractice', data: { dog: dog.callName, practice: to.name } });
  await say(tx, { once: `handed-over:${order.id}:${from}:practice`, kind: 'handedOver', template: 'handedOver', order: order.id, practice: from, to: { name: to.name, email: to.email }, data: { accession: order.accession, from: old } });
  await tx.$executeRaw`SELECT app.hand_over(${order.id}::uuid, ${input.to}::uuid)`;
  const fresh = await readOrder(tx, order.id);
  if (!fresh) throw notFound();
  Object.assign(order, fresh);
  return [{ type: 'handedOver', from, to: input.to, ownerAgreed: true, detail: { name: to.name } }];
});
