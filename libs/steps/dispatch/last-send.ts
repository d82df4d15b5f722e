import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

/** The newest sending of a study that is not known to have failed. */
export function lastSending(work: Work, study: string): { send: string; package: string; centre: string } {
  const sent = work.facts('packageSent').filter((f) => f.study === study).at(-1);
  if (!sent) throw new StepError('NOT_AT_THIS_STEP', t('Nothing has been sent for this study yet.'));
  return { send: sent.send, package: sent.package, centre: sent.centre };
}

export const lastSend = (work: Work, study: string): string => lastSending(work, study).send;
