import type { Work } from '../record/work.js';
import { say, type Saying } from './say.js';

/** Tells the dog's owners, or the people named; a person without an address is left to the desk. */
export async function sayToOwners(work: Work, s: Omit<Saying, 'order' | 'practice' | 'to' | 'once'> & { once: string; people?: string[] }): Promise<void> {
  const { people, ...saying } = s;
  for (const person of await ownersByMail(work, people)) {
    await say(work.tx, { ...saying, once: `${s.once}:${person.id}`, order: work.order.id, practice: work.order.practice, to: { person: person.id, name: person.name, email: person.email } });
  }
}

/** Who owns the dog today, or who is named, of those with a mail address. Who gets the result is another question. */
export async function ownersByMail({ tx, order }: Work, people?: string[]) {
  const roles = people ? [] : await tx.dogRole.findMany({ where: { dogId: order.dog, role: { in: ['owner', 'coOwner'] }, until: null }, select: { personId: true } });
  const wanted = people ?? roles.map((r) => r.personId);
  const rows = await tx.person.findMany({ where: { id: { in: wanted }, practiceId: order.practice, email: { not: null } }, select: { id: true, name: true, email: true }, orderBy: { name: 'asc' } });
  return rows.flatMap((r) => (r.email ? [{ id: r.id, name: r.name, email: r.email }] : []));
}
