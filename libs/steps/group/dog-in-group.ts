import type { NewBooking } from '#libs/contracts/booking';
import type { GroupOptions, NewGroupBooking } from '#libs/contracts/group-booking';
import { daysBetween } from '#libs/pathway/days';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { openBooking } from '../booking/create-booking.js';
import type { Actor } from '../record/actor.js';
import { spokenDay } from '../record/day-words.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';

type Problem = GroupOptions['dogs'][number]['problems'][number];
type Wanted = NewGroupBooking['dogs'][number];
export type Line = Wanted & ({ work: Work } | { problem: Problem });

/** What lies with one dog; anything else lies with the form, and refuses it whole. */
const ITS_OWN = new Set(['NOT_ELIGIBLE', 'SLOT_TAKEN']);

/** Books one dog of several. When that cannot be, all that was written for it is taken back, and nothing of the others'. */
export async function bookDogOfGroup(tx: Tx, deps: StepDeps, actor: Actor, group: NewGroupBooking, wanted: Wanted): Promise<Line> {
  const stranger = await strangerTo(tx, group, wanted.dog);
  if (stranger) return { ...wanted, problem: stranger };
  await tx.$executeRawUnsafe('SAVEPOINT dog');
  try {
    const work = await openBooking(tx, deps, actor, bookingOf(group, wanted));
    await tx.$executeRawUnsafe('RELEASE SAVEPOINT dog');
    return { ...wanted, work };
  } catch (error) {
    if (!(error instanceof StepError) || !ITS_OWN.has(error.code)) throw error;
    await tx.$executeRawUnsafe('ROLLBACK TO SAVEPOINT dog');
    return { ...wanted, problem: problemOf(error, wanted.slot) };
  }
}

const bookingOf = ({ studies, answers, answerNotes, payer, addressees, estimateAccepted, estimateEachMinor, advice }: NewGroupBooking, { key, dog, slot }: Wanted): NewBooking => ({
  key, dog, studies, slot, answers, answerNotes, payer, addressees, estimateTotalMinor: estimateEachMinor, ...(estimateAccepted ? { estimateAccepted } : {}), ...(advice ? { advice } : {}),
});

/** Nobody gets the letter or the bill of a dog that is not theirs because it was named among others. */
async function strangerTo(tx: Tx, { caller, payer, addressees }: NewGroupBooking, dog: string): Promise<Problem | null> {
  const roles = await tx.dogRole.findMany({ where: { dogId: dog, until: null }, select: { personId: true } });
  const stranger = [caller, payer, ...addressees.map((a) => a.person)].find((person) => !roles.some((r) => r.personId === person));
  if (!stranger) return null;
  const person = await tx.person.findUnique({ where: { id: stranger }, select: { name: true } });
  return { code: 'NOT_OF_THIS_DOG', words: t('{person} is not among the people of this dog. Add them on the dog’s page, or book it by itself.', { person: person?.name ?? t('This person') }) };
}

function problemOf(error: StepError, slot: Wanted['slot']): Problem {
  const because = error.more.because?.find((b) => b.earliestDate) ?? error.more.because?.[0];
  if (!because) return { code: error.code, words: t('{start} has just been taken. Choose another time for this dog.', { start: slot.start }) };
  const { code, earliestDate } = because;
  if (code !== 'TOO_YOUNG' || !earliestDate) return { code, words: error.message, ...(earliestDate ? { earliestDate } : {}) };
  const days = daysBetween(slot.day, earliestDate);
  return { code, words: t('Too young on {day}, by {days, plural, one {# day} other {# days}}. Old enough from {earliestDate}.', { day: spokenDay(slot.day), days, earliestDate: spokenDay(earliestDate) }), earliestDate };
}
