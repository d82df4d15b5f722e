import { z } from 'zod';
import { id, key, localDay } from './common.js';

/** A visit for which an earlier time is wanted. */
export const joinWaiting = z.object({ key, visit: id, fromDay: localDay.optional() });

export const waitingRow = z.object({
  entry: id,
  order: id,
  accession: z.string(),
  dog: z.string(),
  owner: z.string(),
  phone: z.string(),
  studies: z.array(z.string()),
  /** When the visit stands now; null for one that has no time yet. */
  day: localDay.nullable(),
  start: z.string().nullable(),
  fromDay: localDay.nullable(),
  since: z.string(),
  offer: z.object({ day: localDay, start: z.string(), expiresAt: z.string() }).nullable(),
  /** Earlier offers, in words. */
  earlier: z.array(z.string()),
});
export const waitingList = z.object({ rows: z.array(waitingRow), more: z.boolean() });
export type WaitingList = z.infer<typeof waitingList>;

/** A time that is offered on the owner's page. */
export const ownerOffer = z.object({ offer: z.object({ id, day: localDay, start: z.string(), insteadOf: z.object({ day: localDay, start: z.string() }).nullable(), expiresAt: z.string() }).nullable() });
export type OwnerOffer = z.infer<typeof ownerOffer>;
export const answerOffer = z.object({ offer: id, answer: z.enum(['yes', 'no']) });
