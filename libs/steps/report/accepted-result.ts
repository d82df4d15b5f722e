import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

export function acceptedResult(work: Work, study: string): string {
  const withdrawn = new Set(work.facts('resultWithdrawn').map((f) => f.result));
  const accepted = work.facts('resultAccepted').filter((f) => f.study === study && !withdrawn.has(f.result)).at(-1);
  if (!accepted) throw new StepError('NOT_AT_THIS_STEP', 'No result is accepted for this study.');
  return accepted.result;
}
