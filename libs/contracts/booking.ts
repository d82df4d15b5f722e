import { z } from 'zod';
import { answer, id, key, localDay, localTime, money, question } from './common.js';

export const chosenStudy = z.object({ protocol: z.string().max(40), version: z.string().max(20), centre: id });

/** What the booking form asks while it is being filled in. */
export const bookingOptionsAsked = z.object({ dog: id, studies: z.array(chosenStudy).max(6), from: localDay.optional(), days: z.int().min(1).max(31).default(14) });

export const slot = z.object({
  day: localDay,
  start: localTime,
  minutes: z.int(),
  room: z.object({ id, name: z.string() }),
  operator: z.object({ id, name: z.string() }),
  nurse: z.object({ id, name: z.string() }),
  vet: z.object({ id, name: z.string() }),
});
export type Slot = z.infer<typeof slot>;

export const estimateLine = z.object({ words: z.string(), amountMinor: z.int() });
export const estimate = z.object({ lines: z.array(estimateLine), total: money });
export type Estimate = z.infer<typeof estimate>;

export const bookingOptions = z.object({
  day: localDay,
  studies: z.array(
    z.object({
      protocol: z.string(),
      version: z.string(),
      name: z.string(),
      views: z.int(),
      centres: z.array(z.object({ id, name: z.string() })),
      /** Empty when it can be done; else why not, in words, with the earliest day where time cures it. */
      problems: z.array(z.object({ code: z.string(), words: z.string(), earliestDate: localDay.optional() })),
      says: z.string(),
    }),
  ),
  slots: z.array(slot),
  estimate,
  questions: z.array(z.object({ question, words: z.string() })),
  advice: z.array(z.object({ id, title: z.string(), forDogs: z.string(), approvedBy: z.string() })),
  people: z.array(z.object({ id, name: z.string(), roles: z.array(z.string()), email: z.string().nullable() })),
  repeats: z.array(z.object({ accession: z.string(), orderId: id, words: z.string() })),
});
export type BookingOptions = z.infer<typeof bookingOptions>;

/** One call books everything or nothing. */
export const newBooking = z.object({
  key,
  dog: id,
  studies: z.array(chosenStudy).min(1, 'Choose at least one study.').max(6),
  slot: z.object({ day: localDay, start: localTime, minutes: z.int().min(15).max(240), room: id, operator: id, nurse: id, vet: id }),
  answers: z.partialRecord(question, answer),
  answerNotes: z.partialRecord(question, z.string().trim().max(300)).default({}),
  payer: id,
  addressees: z.array(z.object({ person: id, channel: z.enum(['mail', 'post', 'none']) })).min(1, 'Name who gets the result.'),
  /** Left out when nobody has accepted it yet: the booking stands, with a hold. */
  estimateAccepted: z.object({ by: id, how: z.enum(['phone', 'paper', 'link']) }).optional(),
  /** The amount that was read out; refused when prices changed in between. */
  estimateTotalMinor: z.int().min(0),
  advice: id.optional(),
});
export type NewBooking = z.infer<typeof newBooking>;
export const booked = z.object({ order: id, accession: z.string() });
