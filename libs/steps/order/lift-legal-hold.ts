import { t } from '#libs/words/spoken';
import { staffName } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** Two people, never one. */
export const liftLegalHold = useCase('liftLegalHold', async (work, _on, input) => {
  if (input.second === work.actor.id) throw badInput('second', t('The second person must be somebody else.'));
  return [{ type: 'legalHoldLifted', why: input.why, second: input.second, detail: { secondName: await staffName(work, input.second) } }];
});
