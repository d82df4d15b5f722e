import { t } from '#libs/words/spoken';
import { personName } from '../record/person-name.js';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { visitEstimate } from './visit-estimate.js';

/** What was read out is what is accepted: a price that changed in between is shown again. */
export const acceptEstimate = useCase('acceptEstimate', async (work, on, input) => {
  const { lines, total } = await visitEstimate(work, on);
  if (total.amountMinor !== input.totalMinor) throw new StepError('CHANGED_MEANWHILE', t('A price changed in the meantime. Look at the estimate again.'));
  return [{ type: 'estimateAccepted', visit: on, amountMinor: total.amountMinor, currency: total.currency, how: input.how, payer: input.payer, detail: { name: await personName(work, input.payer), lines } }];
});
