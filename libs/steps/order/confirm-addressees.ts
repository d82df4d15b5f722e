import { t } from '#libs/words/spoken';
import { useCase } from '../record/use-case.js';
import { badInput } from '../record/step-error.js';

/** Who gets the result from now on, each by the channel that the register names for them. */
export const confirmAddressees = useCase('confirmAddressees', async ({ tx }, _on, input) => {
  const people = await tx.person.findMany({ where: { id: { in: input.people } }, select: { id: true, name: true, channel: true } });
  if (people.length !== input.people.length) throw badInput('people', t('One of these people is not in your register.'));
  const addressees = people.map((p) => ({ person: p.id, channel: p.channel as 'mail' | 'post' | 'none' }));
  return [{ type: 'addresseesConfirmed', addressees, detail: { names: people.map((p) => p.name) } }];
});
