import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

/** The offer that nobody has answered yet. */
export function openReferral(work: Work): string {
  const answered = new Set(work.facts('referralAnswered').map((f) => f.referral));
  const open = work.facts('referralOffered').filter((f) => !answered.has(f.referral)).at(-1);
  if (!open) throw new StepError('NOT_AT_THIS_STEP', 'No referral waits for an answer.');
  return open.referral;
}
