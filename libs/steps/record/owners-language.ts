import { asLanguage, type Language } from '#libs/words/languages';
import type { Work } from './work.js';

/** For a paper that is everybody's at home: the language of the owners, English where they have none in common. */
export async function ownersLanguage({ tx, order }: Work): Promise<Language> {
  const roles = await tx.dogRole.findMany({ where: { dogId: order.dog, role: { in: ['owner', 'coOwner'] }, until: null }, select: { personId: true } });
  const people = await tx.person.findMany({ where: { id: { in: roles.map((r) => r.personId) } }, select: { language: true } });
  const spoken = new Set(people.map((p) => asLanguage(p.language)));
  return spoken.size === 1 ? [...spoken][0]! : 'en';
}
