import type { Words } from '#libs/words/words';
import type { Hold, StudyStanding } from './evaluation.js';
import type { StudyPicture } from './study-picture.js';
import type { StudyStep } from './steps.js';
import { firstWaitedFor } from './routine.js';
import { type Knot, type KnotState, type StudyKnot, studyKnotNames } from './thread-line.js';

/** How many knots are tied at a step, the last one being where the study is now. */
const tied: Record<StudyStep, number> = {
  rejected: 2, asked: 0, imaging: 0, ready: 1, sealed: 1, sent: 2, withCentre: 3, appealed: 6, answered: 4, accepted: 5,
  released: 6, reported: 6, ended: 0,
};

export function studyKnots(study: StudyPicture, standing: StudyStanding, t: Words): { knots: Knot<StudyKnot>[]; hold: Hold | null } {
  // While the dog still sleeps, missing views are simply the next ones to take.
  const asleep = study.visit?.step === 'sedated';
  const holds = standing.holds.filter((hold) => !(asleep && (hold.code === 'VIEWS_MISSING' || hold.code === 'VERDICT_MISSING')));
  const hold = study.open ? firstWaitedFor(holds) : null;
  const { packages } = study;
  const sentBack = packages.lastRejection && !packages.live && study.open;
  const count = sentBack ? 2 : study.step === 'ended' ? reachedBeforeEnd(study) : tied[study.step];
  const knots = studyKnotNames.map((name, place): Knot<StudyKnot> => {
    const at = place < count || (sentBack && place === 2) ? timeOf(study, name) : undefined;
    const state = stateAt(study, place, count, hold !== null);
    const note = noteOf(study, name, state, t);
    return { name, state, ...(at === undefined ? {} : { at }), ...(note === undefined ? {} : { note }) };
  });
  return { knots, hold };
}

function stateAt(study: StudyPicture, place: number, count: number, held: boolean): KnotState {
  const { step, packages, open } = study;
  if (step === 'ended') return place === Math.max(count - 1, 0) ? 'ended' : place < count ? 'done' : 'toCome';
  if (open && packages.lastRejection && !packages.live) {
    if (place < 2) return 'done';
    if (place === 2) return 'sentBack';
    return place === 3 && held ? 'held' : 'toCome';
  }
  // The last knot is not tied before every addressee has the letter.
  const last = studyKnotNames.length - 1;
  if (held && place === Math.min(count, last)) return 'held';
  if (open && !held && place === Math.min(Math.max(count - 1, 0), last) && (count > 0 || step === 'imaging')) return 'here';
  return place < count ? 'done' : 'toCome';
}

function reachedBeforeEnd({ packages, results }: StudyPicture): number {
  if (results.accepted) return 5;
  if (results.waiting.length > 0) return 4;
  if (packages.acknowledged) return 3;
  if (packages.everSent) return 2;
  return packages.live ? 1 : 0;
}

function timeOf(study: StudyPicture, name: StudyKnot): string | undefined {
  const { facts, packages, results, letters } = study;
  switch (name) {
    case 'checked': return facts.last('verdictGiven')?.at ?? packages.live?.at;
    case 'sent': return (packages.sent ?? facts.last('packageSent'))?.at;
    case 'received': return (packages.live ? packages.acknowledged : packages.lastRejection)?.at;
    case 'read': return (results.accepted?.result ?? results.waiting[0])?.at;
    case 'accepted': return results.accepted?.by.at;
    case 'reported': return letters.deliveredAt;
  }
}

function noteOf(study: StudyPicture, name: StudyKnot, state: KnotState, t: Words): string | undefined {
  const { missing, films, protocolRules, packages } = study;
  if (state === 'sentBack') return packages.lastRejection?.reasons.join(', ');
  if (name !== 'checked' || films.length === 0 || !protocolRules) return undefined;
  const all = protocolRules.views.length;
  return missing.length === 0 ? t.known('all views') : t.known('{done} of {all} views', { done: all - missing.length, all });
}
