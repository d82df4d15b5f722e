import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** Only while nobody knows what the second reader found. */
export const closeAppeal = useCase('closeAppeal', ({ evaluation }, on, input) => {
  if (evaluation.studies[on]?.step === 'answered') throw new StepError('NOT_AT_THIS_STEP', t('The second reading has come. It stands, whichever way it goes.'));
  return [{ type: 'appealClosed', study: on, why: input.reason }];
});
