import { useCase } from '../record/use-case.js';
import { endSendings } from './delivery.js';
import { withdrawSent } from './withdraw-sent.js';

/** The owner withdrew after sending: a person tells the centre, and its archive is told too. */
export const tellCentre = useCase('tellCentre', async (work, on) => {
  await endSendings(work, on);
  await withdrawSent(work, { study: on }, { why: 'expired', words: 'The owner has withdrawn consent. These films are not to be read.' });
  return [{ type: 'centreTold', study: on }];
});
