import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Fact } from '#libs/pathway/facts';
import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import type { Work } from '../record/work.js';

export type Film = Extract<Fact, { type: 'exposureTaken' }>;

/** A film that was taken in this order, also one that was taken out of it later. */
export function filmTaken({ facts }: Work, exposure: string): Film {
  const taken = facts('exposureTaken').find((f) => f.exposure === exposure);
  if (!taken) throw badInput('exposure', t('This order has no such film. Choose one that was taken in it.'));
  return taken;
}

/** A film of this order that nobody has taken out. */
export function filmOf(work: Work, exposure: string): Film {
  const taken = filmTaken(work, exposure);
  if (work.facts('exposureDisowned').some((f) => f.exposure === exposure)) throw badInput('exposure', t('This film was taken out of the order. Choose another one.'));
  return taken;
}

/** The studies that a film is for: as it was taken, or as somebody said since. */
export const servedBy = ({ facts }: Pick<Work, 'facts'>, exposure: string): string[] =>
  facts('exposureAssigned').findLast((f) => f.exposure === exposure)?.serves ?? facts('exposureTaken').find((f) => f.exposure === exposure)?.serves ?? [];

/** Studies are served by the views they ask for, and by no others. */
export function refuseServing({ evaluation }: Work, view: string, studies: readonly string[]): void {
  for (const study of studies) {
    const standing = evaluation.studies[study];
    const views = standing && findProtocol(standing.protocol, standing.version)?.views;
    if (!views?.some((v) => v.code === view)) throw badInput('serves', t('This view does not belong to one of the studies.'));
  }
}
