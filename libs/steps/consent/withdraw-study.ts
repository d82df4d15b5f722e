import { endSendings } from '../dispatch/delivery.js';
import { useCase } from '../record/use-case.js';

/** What can no longer be undone was said before the yes; taking it back stops everything that still can be stopped. */
export const withdrawStudy = useCase('withdrawStudy', async (work, on, input) => {
  if (input.purpose === 'study') await endSendings(work, on);
  return [{ type: 'consentWithdrawn', purpose: input.purpose, study: on, ...(input.why ? { why: input.why } : {}) }];
});
