import type { FactOf } from '#libs/pathway/facts';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

/** The offer that nobody has answered yet. */
export function openReferral(work: Pick<Work, 'facts'>): FactOf<'referralOffered'> {
  const answered = new Set(work.facts('referralAnswered').map((f) => f.referral));
  const open = work.facts('referralOffered').filter((f) => !answered.has(f.referral)).at(-1);
  if (!open) throw new StepError('NOT_AT_THIS_STEP', t('No referral waits for an answer.'));
  return open;
}

/** The practice that takes the pictures, when one has said that it will. */
export function acceptedReferral(work: Pick<Work, 'facts'>): FactOf<'referralOffered'> | undefined {
  const accepted = new Set(work.facts('referralAnswered').filter((f) => f.answer === 'accepted').map((f) => f.referral));
  return work.facts('referralOffered').findLast((f) => accepted.has(f.referral));
}
