import { t } from '#libs/words/spoken';
import { openIncident } from '../incident/open-incident.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';

/** The certificate's page says so from this moment on; a correction to everybody who got the letter becomes due. */
export const withdrawResult = useCase('withdrawResult', async (work, on, input) => {
  const { tx, order, facts } = work;
  if (!facts('resultAccepted').some((f) => f.study === on && f.result === input.result)) throw badInput('result', t('Only a reading that was accepted can be withdrawn. Refuse one that waits.'));
  const serials = facts('letterReleased').filter((f) => f.study === on && f.result === input.result).map((f) => f.detail?.serial).filter((s) => typeof s === 'string');
  await tx.document.updateMany({ where: { orderId: order.id, kind: 'certificate', serial: { in: serials }, state: 'valid' }, data: { state: 'withdrawn' } });
  if (input.reason === 'otherDog') await openIncident(work, { study: on, kind: serials.length > 0 ? 'wrongDogTold' : 'wrongDogHeld' });
  return [{ type: 'resultWithdrawn', study: on, result: input.result, why: input.reason }];
});
