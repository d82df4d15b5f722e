import { useCase } from '../record/use-case.js';
import { lastSending } from '../dispatch/last-send.js';

/** The centre could not read these views; their accepted verdicts no longer stand, the films stay. */
export const rejectFilms = useCase('rejectFilms', (work, on, input) => {
  const { package: sealed, send } = lastSending(work, on);
  return [{ type: 'filmsRejected', study: on, package: sealed, send, views: input.views, reasons: input.reasons }];
});
