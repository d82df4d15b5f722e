import { t } from '#libs/words/spoken';
import { randomUUID } from 'node:crypto';
import { refuseRestricted } from '../booking/refuse-restricted.js';
import { personName } from '../record/person-name.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Stated } from '../record/work.js';

/** Where nobody in the house decided to take pictures again, it is easily taken for granted that somebody else pays. */
const WHO_PAYS_IS_SAID: ReadonlySet<string> = new Set(['rejected', 'lost']);

/** A further day: everything is asked again, because a new visit carries nothing over. */
export const openVisit = useCase('openVisit', async (work, _on, input) => {
  if (!input.payer && WHO_PAYS_IS_SAID.has(input.reason)) throw badInput('payer', t('Name who pays for this visit: the pictures are taken again for a reason that is not the owner’s.'));
  await refuseRestricted(work.tx, work.order.dog, input.payer ? [input.payer] : []);
  const stated: Stated[] = [{ type: 'visitOpened', visit: randomUUID(), studies: input.studies, why: input.reason, ...(input.restUntil ? { restUntil: input.restUntil } : {}) }];
  if (input.payer) stated.push({ type: 'payerNamed', payer: input.payer, detail: { name: await personName(work, input.payer) } });
  return stated;
});
