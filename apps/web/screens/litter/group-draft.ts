import type { GroupOptions, NewGroupBooking } from '#libs/contracts/group-booking';
import type { Slot } from '#libs/contracts/booking';
import { emptyDraft, type Draft } from '../booking/booking-draft.js';
import { t } from '../../words/t.js';

/** Several dogs while they are being talked through on the phone. */
export type GroupDraft = Draft & {
  dogs: string[];
  day: string | undefined;
  /** Times that were chosen by hand; the others follow one another. */
  starts: Record<string, string>;
  caller: string | undefined;
  isLitter: boolean;
  whole: boolean;
  born: number | undefined;
  alive: number | undefined;
};

export const emptyGroup: GroupDraft = { ...emptyDraft, dogs: [], day: undefined, starts: {}, caller: undefined, isLitter: false, whole: false, born: undefined, alive: undefined };

/**
 * Each dog's time: what was chosen, else the first that is left, in the order of the dogs. A dog that cannot be
 * booked on that day comes last, so that it takes no time from another.
 */
export function timesOf(draft: GroupDraft, options: GroupOptions): Map<string, Slot> {
  const taken = new Map<string, Slot>();
  const byStart = new Map(options.slots.map((s) => [s.start, s]));
  for (const dog of draft.dogs) {
    const chosen = byStart.get(draft.starts[dog] ?? '');
    if (chosen) taken.set(dog, chosen);
  }
  const hindered = (dog: string) => (options.dogs.find((d) => d.dog === dog)?.problems.length ?? 0) > 0;
  for (const dog of [...draft.dogs.filter((d) => !hindered(d)), ...draft.dogs.filter(hindered)]) {
    const used = [...taken.values()];
    const free = options.slots.find((s) => !used.includes(s));
    if (!taken.has(dog) && free) taken.set(dog, free);
  }
  return taken;
}

export type Gap = { path: string; says: string };

/** What is still missing, in the order of the form. */
export function gapsIn(draft: GroupDraft, options: GroupOptions | undefined, today: string): Gap[] {
  if (draft.dogs.length === 0) return [{ path: 'dogs', says: t('Find the dogs, or enter the pups.') }];
  const gaps: Gap[] = litterGaps(draft);
  if (draft.studies.length === 0) gaps.push({ path: 'studies', says: t('Choose at least one study.') });
  if (!draft.day) gaps.push({ path: 'day', says: t('Choose the day.') });
  else if (draft.day < today) gaps.push({ path: 'day', says: t('This day has passed.') });
  if (!options) return gaps;
  const times = [...timesOf(draft, options).values()];
  if (draft.studies.length > 0 && times.length < draft.dogs.length) gaps.push({ path: 'times', says: t('{times} times are free on this day, for {dogs} dogs. Choose another day, or take dogs off.', { times: options.slots.length, dogs: draft.dogs.length }) });
  if (new Set(times).size < times.length) gaps.push({ path: 'times', says: t('Two dogs have the same time. Choose another one for one of them.') });
  for (const { question } of options.questions) if (!draft.answers[question]) gaps.push({ path: question, says: t('Yes, no or don’t know.') });
  if (options.people.length === 0) gaps.push({ path: 'caller', says: t('Nobody is among the people of all these dogs. Add a person on the dogs’ pages, or book them by themselves.') });
  else if (!draft.caller) gaps.push({ path: 'caller', says: t('Say who is calling.') });
  if (!draft.payer) gaps.push({ path: 'payer', says: t('Say who pays.') });
  if (draft.addressees.length === 0) gaps.push({ path: 'addressees', says: t('Name who gets the result.') });
  return gaps;
}

function litterGaps({ isLitter, whole, born, alive, dogs }: GroupDraft): Gap[] {
  if (!isLitter) return [];
  const gaps: Gap[] = [];
  if (!(born && born > 0)) gaps.push({ path: 'born', says: t('How many were born?') });
  if (!(alive && alive > 0 && alive <= (born ?? 0))) gaps.push({ path: 'alive', says: t('How many live? Not more than were born.') });
  if (whole && alive !== dogs.length) gaps.push({ path: 'whole', says: t('For a whole litter all living pups are named; here are {count}.', { count: dogs.length }) });
  return gaps;
}

export function groupOf(draft: GroupDraft, key: string, keys: (dog: string) => string, options: GroupOptions): NewGroupBooking | null {
  const times = timesOf(draft, options);
  const { caller, payer, accepted, born, alive } = draft;
  if (!caller || !payer) return null;
  return {
    key,
    dogs: draft.dogs.flatMap((dog) => {
      const s = times.get(dog);
      return s ? [{ key: keys(dog), dog, slot: { day: s.day, start: s.start, minutes: s.minutes, room: s.room.id, operator: s.operator.id, nurse: s.nurse.id, vet: s.vet.id } }] : [];
    }),
    studies: draft.studies,
    answers: draft.answers,
    answerNotes: draft.notes,
    caller,
    payer,
    addressees: draft.addressees,
    ...(accepted.by && accepted.how && { estimateAccepted: { by: accepted.by, how: accepted.how } }),
    estimateEachMinor: options.estimate.total.amountMinor,
    ...(draft.advice && { advice: draft.advice }),
    ...(draft.isLitter && born && alive && { litter: { whole: draft.whole, born, alive } }),
  };
}
