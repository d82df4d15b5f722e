import { useCase } from '../record/use-case.js';
import { filmsOf } from './films-of.js';
import { withdrawSent } from './withdraw-sent.js';

/** The owner withdrew after sending: a person tells the centre, and its archive is told too. */
export const tellCentre = useCase('tellCentre', async (work, on) => {
  await withdrawSent(work, filmsOf(work, on).map((film) => film.image), { why: 'expired', words: 'The owner has withdrawn consent. These films are not to be read.' });
  return [{ type: 'centreTold', study: on }];
});
