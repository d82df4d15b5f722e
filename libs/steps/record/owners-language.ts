import { asLanguage, type Language } from '#libs/words/languages';
import type { Work } from './work.js';

/** For a paper that is everybody's at home: the language of the owners, English where they have none in common. */
export async function ownersLanguage({ tx, order }: Work): Promise<Language> {
  const roles = await tx.dogRole.findMany({ where: { dogId: order.dog, role: { in: ['owner', 'coOwner'] }, until: null }, select: { personId: true } });
  const people = await tx.person.findMany({ where: { id: { in: roles.map((r) => r.personId) } }, select: { language: true } });
  return inCommon(people.map((p) => asLanguage(p.language)));
}

/** English where people have no language in common. */
export const inCommon = ([first, ...others]: Language[]): Language => (first && others.every((other) => other === first) ? first : 'en');
