import { useCase } from '../record/use-case.js';
import { endSendings } from '../dispatch/delivery.js';
import { lastSending } from '../dispatch/last-send.js';

/** The centre could not read these views; their accepted verdicts no longer stand, the films stay. What was still on its way goes with the next package. */
export const rejectFilms = useCase('rejectFilms', async (work, on, input) => {
  await endSendings(work, on);
  const { package: sealed, send } = lastSending(work, on);
  return [{ type: 'filmsRejected', study: on, package: sealed, send, views: input.views, reasons: input.reasons }];
});
