import { longDay } from '#libs/words/days';
import type { Words } from '#libs/words/words';
import type { OwnerPage } from '#libs/contracts/screens/owner';
import type { Evaluation } from '#libs/pathway/evaluation';
import { isOpenVisit } from '#libs/pathway/steps';

const KNOTS = ['here', 'asleep', 'pictures', 'awake', 'home'] as const;
/** How many of the five are behind the dog at a step of its visit; the next one is where it is. */
const DONE: Record<string, { done: number; here: boolean }> = {
  admitted: { done: 0, here: true }, sedated: { done: 1, here: true }, imaged: { done: 3, here: true }, recovered: { done: 4, here: false }, home: { done: 5, here: false },
};

export function lastVisit(e: Evaluation) {
  const visits = Object.values(e.visits);
  return visits.find((v) => isOpenVisit(v.step)) ?? visits.at(-1);
}

export function ownerKnots(e: Evaluation): OwnerPage['knots'] {
  const at = DONE[lastVisit(e)?.step ?? ''] ?? { done: 0, here: false };
  return KNOTS.map((name, i) => ({ name, state: i < at.done ? 'done' : i === at.done && at.here ? 'here' : 'toCome' }));
}

/** One sentence in the owner's words: the dog first, then its pictures. */
export function ownerStatus(e: Evaluation, dog: string, t: Words): string {
  const visit = lastVisit(e);
  const said: Record<string, string> = {
    wanted: t('We will agree a day for {dog} with you.', { dog }),
    booked: visit?.day ? t('{dog} is expected on {day} at {start}.', { dog, day: longDay(t.language, visit.day), start: visit.start ?? '' }) : t('{dog} is booked.', { dog }),
    admitted: t('{dog} is here.', { dog }),
    sedated: t('{dog} is asleep and watched all the time.', { dog }),
    imaged: t('The pictures are over. {dog} is waking up.', { dog }),
    recovered: t('{dog} is awake and can soon go home.', { dog }),
    cancelled: t('The visit was cancelled.'),
    missed: t('The visit did not take place.'),
    turnedAway: t('{dog} was not put to sleep on the day. We will find another day.', { dog }),
    died: t('We are very sorry. Please call us whenever you like.'),
  };
  const now = said[visit?.step ?? ''];
  if (now) return now;
  const steps = Object.values(e.studies).map((s) => s.step);
  if (steps.length > 0 && steps.every((s) => s === 'reported' || s === 'ended')) return t('Everything about {dog} has been answered.', { dog });
  if (steps.some((s) => s === 'reported' || s === 'released')) return t('A letter has been sent. Other pictures of {dog} are still being read.', { dog });
  if (steps.some((s) => s === 'answered' || s === 'accepted')) return t('A reading has come back. Our vet looks at it and writes to you.');
  if (steps.some((s) => s === 'rejected')) return t('The reading centre asks for some pictures again. We will call you.');
  return t('{dog} is at home. The pictures are on their way to the reader, or being read.', { dog });
}
