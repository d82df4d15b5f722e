import { randomUUID } from 'node:crypto';
import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { say } from '../messages/say.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** The result stays with the order; the buyer is written down beside the seller, who stays in the record. Both are asked for their yes. */
export const recordTransfer = useCase('recordTransfer', async (work, _on, input) => {
  const { tx, order, now } = work;
  if (input.day > localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC')) throw badInput('day', t('This day is still to come. Write the sale down once the dog has changed hands.'));
  const day = new Date(`${input.day}T00:00:00Z`);
  const [buyer, sale] = [randomUUID(), randomUUID()];
  const roles = await tx.dogRole.findMany({ where: { dogId: order.dog, role: 'owner', until: null }, select: { personId: true } });
  const sellers = await tx.person.findMany({ where: { id: { in: roles.map((r) => r.personId) } }, select: { id: true, name: true, email: true } });
  const { callName: dog } = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { callName: true } });
  const person = { id: buyer, name: input.buyerName, email: input.buyerEmail ?? null };
  await tx.person.create({ data: { ...person, practiceId: order.practice, channel: input.buyerEmail ? 'mail' : 'post' } });
  await tx.dogRole.updateMany({ where: { dogId: order.dog, role: 'owner', until: null }, data: { until: day } });
  await tx.dogRole.create({ data: { practiceId: order.practice, dogId: order.dog, personId: buyer, role: 'owner', from: day } });
  for (const [template, people] of [['transferSeller', sellers], ['transferBuyer', [person]]] as const) {
    for (const { id, name, email } of people) {
      if (email) await say(tx, { once: `transfer:${sale}:${id}`, kind: 'consentLink', template, order: order.id, practice: order.practice, to: { person: id, name, email }, data: { dog, day: input.day } });
    }
  }
  return [{ type: 'dogTransferred', day: input.day, buyer, detail: { name: input.buyerName, sellers: sellers.map((s) => s.id) } }];
});
