import { t } from '#libs/words/spoken';
import { openIncident } from '../incident/open-incident.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { mustWait } from './must-wait.js';

/** A reading that is not this dog's, or cannot be, leaves the road and stays in the record. */
export const refuseResult = useCase('refuseResult', async (work, on, input) => {
  mustWait(work, on, input.result);
  const second = work.facts('resultArrived').find((f) => f.result === input.result)?.reading === 'second';
  if (second && input.reason === 'implausible') throw badInput('reason', t('A second reading stands, whichever way it goes. Only one of another dog, or one that came twice, is refused.'));
  if (input.reason === 'otherDog') await openIncident(work, { study: on, kind: 'wrongDogHeld' });
  return [{ type: 'resultRefused', study: on, result: input.result, why: input.reason }];
});
