import { findProtocol } from '#libs/science/protocols/catalogue';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

/** The version of a practice's own consent text that a yes or no is given to today. */
export function textInForce(work: Work, kind: 'sedationText' | 'sendAllText' | 'statisticsText'): string {
  const version = work.order.rules.practices[work.order.practice]?.[kind];
  if (!version || version === 'none') throw new StepError('HELD', t('Your practice has no approved text for this consent yet. A vet adds it under Practice, Texts.'));
  return version;
}

/** A study's own text comes with its protocol; a changed protocol brings a changed text. */
export function studyText(work: Work, study: string): { version: string; centre: string } {
  const standing = work.evaluation.studies[study];
  if (!standing) throw new StepError('NOT_FOUND', t('This order has no such study.'));
  const changed = work.facts('protocolChanged').filter((f) => f.study === study).at(-1);
  const version = changed?.consentText ?? findProtocol(standing.protocol, standing.version)?.consentText ?? 'none';
  return { version, centre: standing.centre };
}
