import { addDays } from './days.js';
import type { StudySetting } from './study-holds.js';
import type { holdsOn } from './hold.js';
import type { StudyPicture } from './study-picture.js';
import { studySteps } from './steps.js';
import { localDay } from './zones.js';

export function letterHolds(study: StudyPicture, setting: StudySetting, raise: ReturnType<typeof holdsOn>['raise']): void {
  const { step, letters } = study;
  if (letters.appeal) raise('APPEAL_OPEN');
  const call = phoneFirst(study);
  if (call && (step === 'answered' || step === 'accepted')) raise('PHONE_FIRST', { by: call.until });
  if (step === 'accepted') {
    const until = waitsUntil(study, setting);
    if (until !== undefined) raise('LETTER_WAITS', { until });
    raise('LETTER_NOT_RELEASED');
  }
  if (step === 'released') {
    const until = onItsWayUntil(study, setting);
    raise(until === undefined ? 'LETTER_NOT_DELIVERED' : 'LETTER_ON_ITS_WAY', { until, detail: { people: letters.undelivered } });
  }
}

/** Longer than a letter is kept back for the night and for days on which nobody is reached; our own choice. */
const ON_ITS_WAY_DAYS = 7;

/** Nobody is troubled with a letter that has just left, or that waits for the morning. */
function onItsWayUntil({ letters }: StudyPicture, { order, now }: StudySetting): string | undefined {
  if (letters.onItsWay === undefined) return undefined;
  const until = addDays(localDay(letters.onItsWay, order.zone), ON_ITS_WAY_DAYS);
  return localDay(now, order.zone) < until ? until : undefined;
}

/** The vet's wish to speak with the owner first, until that has happened. */
export function phoneFirst(study: StudyPicture) {
  const wish = study.facts.last('phoneFirstSet');
  const reached = study.facts.after('ownerPhoned', wish).some((fact) => fact.reached);
  return wish && !reached ? wish : undefined;
}

/** One letter for all studies waits for the others, but not for ever. */
function waitsUntil(study: StudyPicture, { order, all, now }: StudySetting): string | undefined {
  const policy = order.practiceRules?.letters;
  const accepted = study.results.accepted;
  if (policy?.mode !== 'together' || !accepted) return undefined;
  const until = addDays(localDay(accepted.by.at, order.zone), policy.days);
  if (localDay(now, order.zone) >= until) return undefined;
  const before = new Set<string>(studySteps.slice(0, studySteps.indexOf('accepted')));
  return all.some((other) => other !== study && before.has(other.step)) ? until : undefined;
}
