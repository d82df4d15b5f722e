import { t } from '#libs/words/spoken';
import { personName } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** An owner may want a letter at once, also at night or before a day on which nobody can be asked about it. */
export const chooseLetterTime = useCase('chooseLetterTime', async (work, _on, input) => {
  if (work.actor.roles[0] === 'owner' && input.person !== work.actor.id) throw badInput('person', t('Everybody chooses for their own letters.'));
  return [{ type: 'letterTimeChosen', person: input.person, anyTime: input.anyTime, detail: { name: await personName(work, input.person) } }];
});
