import type { VisitStep } from '#libs/pathway/steps';
import { t } from '#libs/words/spoken';
import { freeSlot } from '../booking/hold-slot.js';
import { say } from '../messages/say.js';
import { sayToOwners } from '../messages/say-to-owner.js';
import { readOrder } from '../record/order-record.js';
import { badInput, notFound, StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated, Work } from '../record/work.js';

/** One order goes to another practice for good, with its dog and the people around it, after its owner has said yes. */
export const handOver = useCase('handOver', async (work, _on, input) => {
  const { tx, order } = work;
  if (!input.ownerAgreed) throw badInput('ownerAgreed', t('Ask the owner first: the other practice gets the whole record. An owner who says no takes the papers along.'));
  const [to] = await tx.$queryRaw<{ name: string; email: string; phone?: string }[]>`SELECT name, email FROM app.practice_directory() WHERE id = ${input.to}::uuid AND id <> ${order.practice}::uuid`;
  if (!to) throw badInput('to', t('This practice does not take part in the scheme.'));
  const from = order.practice;
  const cancelled = await cancelWhatIsBooked(work);
  const { name: old } = order.practices[from]!;
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  // Told before the people change their register, by the practice that they know.
  await sayToOwners(work, { once: `handed-over:${order.id}:${from}`, kind: 'handedOver', template: 'newPractice', data: { dog: dog.callName, practice: to.name, days: cancelled.map((v) => v.day) } });
  await say(tx, { once: `handed-over:${order.id}:${from}:practice`, kind: 'handedOver', template: 'handedOver', order: order.id, practice: from, to: { name: to.name, email: to.email }, data: { accession: order.accession, from: old } });
  await tx.$executeRaw`SELECT app.hand_over(${order.id}::uuid, ${input.to}::uuid)`;
  const fresh = await readOrder(tx, order.id);
  if (!fresh) throw notFound();
  Object.assign(order, fresh);
  return [...cancelled.map(({ visit }): Stated => ({ type: 'visitCancelled', visit, side: 'practice', why: `${old} hands the order over.` })), { type: 'handedOver', from, to: input.to, ownerAgreed: true, detail: { name: to.name } }];
});

/** Nobody hands over a dog that is in the house; a day that was to come is free again, and the new practice finds another. */
async function cancelWhatIsBooked({ tx, evaluation }: Work): Promise<{ visit: string; day: string }[]> {
  const visits = Object.values(evaluation.visits);
  if (visits.some((v) => isHere.has(v.step))) throw new StepError('NOT_AT_THIS_STEP', t('The dog is in the house. Hand the order over once it has gone home.'));
  const booked = visits.filter((v) => v.step === 'booked');
  for (const { id } of booked) await freeSlot(tx, id);
  return booked.map(({ id, day }) => ({ visit: id, day: day! }));
}

const isHere: ReadonlySet<VisitStep> = new Set<VisitStep>(['admitted', 'sedated', 'imaged', 'recovered']);
