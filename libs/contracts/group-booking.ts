import { z } from 'zod';
import { answer, id, key, localDay, question } from './common.js';
import { bookingOptions, chosenStudy, estimate, newBooking, slot } from './booking.js';

const MOST_DOGS = 20;

/** What the form for several dogs asks while it is being filled in. */
export const groupOptionsAsked = z.object({ dogs: z.array(id).min(1).max(MOST_DOGS), studies: z.array(chosenStudy).max(6), day: localDay });

const problem = z.object({ code: z.string(), words: z.string(), earliestDate: localDay.optional() });

export const groupOptions = z.object({
  day: localDay,
  dogs: z.array(z.object({ dog: id, name: z.string(), registered: z.string(), sex: z.enum(['male', 'female']), born: localDay, transponder: z.string(), dam: z.string().nullable(), problems: z.array(problem) })),
  studies: bookingOptions.shape.studies.element.omit({ problems: true, says: true }).array(),
  /** All times of that day at which one dog can be taken; one dog follows the other. */
  slots: z.array(slot),
  /** For each dog. */
  estimate,
  questions: bookingOptions.shape.questions,
  advice: bookingOptions.shape.advice,
  /** Only people of every one of these dogs. */
  people: bookingOptions.shape.people,
});
export type GroupOptions = z.infer<typeof groupOptions>;

/** One call, one caller, one payer; each dog is booked for itself, and what one cannot have costs no other its time. */
export const newGroupBooking = z
  .object({
    key,
    dogs: z.array(z.object({ key, dog: id, slot: newBooking.shape.slot })).min(1, 'Name at least one dog.').max(MOST_DOGS),
    studies: newBooking.shape.studies,
    answers: z.partialRecord(question, answer),
    answerNotes: newBooking.shape.answerNotes,
    caller: id,
    payer: id,
    addressees: newBooking.shape.addressees,
    estimateAccepted: newBooking.shape.estimateAccepted,
    /** What was read out, for each dog. */
    estimateEachMinor: z.int().min(0),
    advice: id.optional(),
    litter: z.object({ whole: z.boolean(), born: z.int().min(1).max(30), alive: z.int().min(1).max(30) }).optional(),
  })
  .superRefine(({ dogs, litter }, ctx) => {
    const twice = dogs.findIndex((d, i) => dogs.findIndex((other) => other.dog === d.dog) !== i);
    if (twice >= 0) ctx.addIssue({ code: 'custom', path: ['dogs', twice, 'dog'], message: 'This dog is named twice. Take it off once.' });
    if (!litter) return;
    if (litter.alive > litter.born) ctx.addIssue({ code: 'custom', path: ['litter', 'alive'], message: 'More live than were born. Correct one of the two.' });
    if (litter.whole && litter.alive !== dogs.length) ctx.addIssue({ code: 'custom', path: ['litter', 'whole'], message: `For a whole litter all ${litter.alive} living pups are named; here are ${dogs.length}. Add the others, or say that it is not the whole litter.` });
  });
export type NewGroupBooking = z.infer<typeof newGroupBooking>;

const line = z.object({
  dog: id,
  name: z.string(),
  order: id.nullable(),
  accession: z.string().nullable(),
  day: localDay.nullable(),
  start: z.string().nullable(),
  step: z.string().nullable(),
  imaged: z.boolean(),
  problem: problem.nullable(),
});

/** A litter, or dogs of one owner, and what became of each. */
export const groupBooking = z.object({
  id,
  day: localDay,
  at: z.string(),
  caller: z.string(),
  payer: z.string(),
  dam: z.string().nullable(),
  litter: z.object({ whole: z.boolean(), born: z.int(), alive: z.int(), imaged: z.int() }).nullable(),
  dogs: z.array(line),
});
export type GroupBooking = z.infer<typeof groupBooking>;
export const groupBookings = z.object({ rows: z.array(groupBooking) });
