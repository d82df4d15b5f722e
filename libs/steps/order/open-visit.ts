import { randomUUID } from 'node:crypto';
import { personName } from '../record/person-name.js';
import { useCase } from '../record/use-case.js';
import type { Stated } from '../record/work.js';

/** A further day: everything is asked again, because a new visit carries nothing over. */
export const openVisit = useCase('openVisit', async (work, _on, input) => {
  const stated: Stated[] = [{ type: 'visitOpened', visit: randomUUID(), studies: input.studies, why: input.reason, ...(input.restUntil ? { restUntil: input.restUntil } : {}) }];
  if (input.payer) stated.push({ type: 'payerNamed', payer: input.payer, detail: { name: await personName(work, input.payer) } });
  return stated;
});
