import type { Words } from '#libs/words/words';
import { lack, lastWord } from './consent.js';
import type { Hold, VisitStanding } from './evaluation.js';
import type { HoldCode } from './hold-codes.js';
import { firstWaitedFor } from './routine.js';
import { type Knot, type VisitKnot, visitKnotNames } from './thread-line.js';
import type { VisitPicture } from './visit-picture.js';

const consentCodes: ReadonlySet<HoldCode> = new Set<HoldCode>([
  'ESTIMATE_NOT_ACCEPTED', 'CONSENT_SEDATION_MISSING', 'EMERGENCY_WISHES_MISSING', 'STUDY_NOT_READY', 'ANSWERS_MISSING',
]);

export function visitKnots(
  visit: VisitPicture, standing: VisitStanding, retakes: number, t: Words,
): { knots: Knot<VisitKnot>[]; hold: Hold | null } {
  const times = reached(visit);
  const hold = visit.open ? firstWaitedFor(standing.holds) : null;
  const done = visitKnotNames.filter((name) => times[name] !== undefined);
  const ring = visit.open ? ringAt(visit) : null;
  const held = hold && heldAt(hold, visit, times);
  const ended = !visit.open && visit.step !== 'home' ? done.at(-1) ?? 'booked' : null;
  const knots = visitKnotNames.map((name): Knot<VisitKnot> => {
    const at = times[name];
    const note = name === 'imaged' && retakes > 0 ? retakeWords(retakes, t) : undefined;
    const state = name === ended ? 'ended' : name === held ? 'held'
      : name === ring && !held ? 'here' : at !== undefined ? 'done' : 'toCome';
    return { name, state, ...(at === undefined ? {} : { at }), ...(note === undefined ? {} : { note }) };
  });
  return { knots, hold };
}

export const retakeWords = (count: number, t: Words): string => t.known('{count, plural, =1 {one retake} one {# retake} other {# retakes}}', { count });

function reached({ facts, step, booking }: VisitPicture): Partial<Record<VisitKnot, string>> {
  const word = lastWord('sedation', facts);
  const consent = lack(word, undefined) === null && facts.has('estimateAccepted') ? word?.at : undefined;
  const times: Partial<Record<VisitKnot, string | undefined>> = {
    booked: booking?.at, consent,
    admitted: facts.first('admitted')?.at,
    sedated: facts.first('sedationStarted')?.at,
    imaged: facts.first('imagingEnded')?.at,
    recovered: facts.first('recoverySigned')?.at,
    goneHome: step === 'home' ? facts.first('wentHome')?.at : undefined,
  };
  return Object.fromEntries(Object.entries(times).filter(([, at]) => at !== undefined));
}

/** A ring means that the dog is here, so a dog still expected has none. */
function ringAt({ step, facts, films }: VisitPicture): VisitKnot | null {
  switch (step) {
    case 'admitted': return 'admitted';
    case 'sedated': return films.length > 0 || facts.all('identityScanned').some((scan) => scan.place === 'table') ? 'imaged' : 'sedated';
    case 'imaged': return 'recovered';
    case 'recovered': return 'goneHome';
    default: return null;
  }
}

/** The knot that a hold keeps from being tied. */
function heldAt(hold: Hold, { step }: VisitPicture, times: Partial<Record<VisitKnot, string>>): VisitKnot {
  if (step === 'wanted') return 'booked';
  if (times.consent === undefined && consentCodes.has(hold.code)) return 'consent';
  if (step === 'booked') return 'admitted';
  if (step === 'admitted') return 'sedated';
  if (step === 'sedated') return 'imaged';
  return step === 'imaged' ? 'recovered' : 'goneHome';
}
