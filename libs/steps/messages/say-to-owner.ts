import type { Work } from '../record/work.js';
import { say, type Saying } from './say.js';

/** Tells whoever is named for the result and reads mail; a person without an address is left to the desk's post. */
export async function sayToOwners(work: Work, s: Omit<Saying, 'order' | 'practice' | 'to' | 'once'> & { once: string; people?: string[] }): Promise<void> {
  const { people, ...saying } = s;
  for (const person of await ownersByMail(work, people)) {
    await say(work.tx, { ...saying, once: `${s.once}:${person.id}`, order: work.order.id, practice: work.order.practice, to: { person: person.id, name: person.name, email: person.email } });
  }
}

async function ownersByMail({ tx, order, facts }: Work, people?: string[]) {
  const named = people ?? (facts('addresseesConfirmed').at(-1) ?? facts('orderOpened').at(-1))?.addressees.filter((a) => a.channel === 'mail').map((a) => a.person) ?? [];
  const rows = await tx.person.findMany({ where: { id: { in: named }, practiceId: order.practice, email: { not: null } }, select: { id: true, name: true, email: true } });
  return rows.flatMap((r) => (r.email ? [{ id: r.id, name: r.name, email: r.email }] : []));
}
