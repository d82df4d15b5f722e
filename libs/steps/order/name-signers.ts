import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated, Work } from '../record/work.js';

type Rule = 'any' | 'all';

/** Any owner's yes is enough, or each owner and co-owner gives one; new orders of the dog follow. */
export const nameSigners = useCase('nameSigners', async (work, _on, input) => {
  const named = await signersBy(work, input.rule);
  if (named.signers.length === 1) throw badInput('rule', t('The register knows one owner of this dog. Write down the co-owners on the dog’s page first.'));
  return [named];
});

/** What the dog's latest order said, with the owners of today; nothing where any owner's yes is enough. */
export async function signersAsBefore(work: Work): Promise<Stated[]> {
  const { tx, order } = work;
  const [last] = await tx.$queryRaw<{ rule: Rule }[]>`
    SELECT f.body->>'rule' AS rule FROM fact f JOIN orders o ON o.id = f.order_id WHERE o.dog_id = ${order.dog}::uuid AND f.type = 'signersNamed' ORDER BY f.rec DESC LIMIT 1`;
  const named = last?.rule === 'all' ? await signersBy(work, 'all') : null;
  return named && named.signers.length > 1 ? [named] : [];
}

async function signersBy({ tx, order }: Work, rule: Rule) {
  const roles = rule === 'all' ? await tx.dogRole.findMany({ where: { dogId: order.dog, role: { in: ['owner', 'coOwner'] }, until: null }, select: { personId: true } }) : [];
  const people = await tx.person.findMany({ where: { id: { in: roles.map((r) => r.personId) }, erasedAt: null }, select: { id: true, name: true }, orderBy: { name: 'asc' } });
  return { type: 'signersNamed' as const, rule, signers: people.map((p) => p.id), detail: { names: people.map((p) => p.name) } };
}
