import { withdrawSent, type Withdrawn } from '../dispatch/withdraw-sent.js';
import { useCase } from '../record/use-case.js';
import { filmOf } from './film-of.js';

const WITHDRAWN: Record<'otherDog' | 'testFilm', Withdrawn> = {
  otherDog: { why: 'wrongOrder', words: 'This film is of another dog.' },
  testFilm: { why: 'quality', words: 'This film was a test and shows no dog.' },
};

/** A film that is no picture of this dog; an archive that has it is told. */
export const disownFilm = useCase('disownFilm', async (work, _on, input) => {
  const { exposure, image } = filmOf(work, input.exposure);
  await withdrawSent(work, { images: [image] }, WITHDRAWN[input.reason]);
  return [{ type: 'exposureDisowned', exposure, why: input.reason }];
});
