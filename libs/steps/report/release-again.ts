import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { acceptedResult } from './accepted-result.js';
import { issueResult } from './issue-result.js';

/** After a bounce, to those whom the letter did not reach, at the address that the register has now. */
export const releaseAgain = useCase('releaseAgain', async (work, on) => {
  const letter = work.facts('letterReleased').filter((f) => f.study === on).at(-1);
  if (!letter) throw new StepError('NOT_AT_THIS_STEP');
  const reached = new Set([
    ...work.facts('letterOutcome').filter((f) => f.letter === letter.letter && f.outcome === 'delivered').map((f) => f.to),
    ...work.facts('letterResolved').filter((f) => f.letter === letter.letter && f.arrived).map((f) => f.to),
  ]);
  const open = letter.to.filter((person) => !reached.has(person));
  return [await issueResult(work, on, acceptedResult(work, on), open)];
});
