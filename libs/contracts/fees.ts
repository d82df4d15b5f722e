import { z } from 'zod';
import { id, key, localDay, page, sentence } from './common.js';

/** Our own choice: a million whole units. Above it the decimal sign has slipped. */
export const MOST_MINOR = 100_000_000;
const WHOLE = 'Write an amount, like 58.00. It is kept as a whole number of the smallest coins.';
export const amountMinor = z.int(WHOLE).min(1, 'An amount is more than nothing.').max(MOST_MINOR, 'At most 1,000,000.00. Look at the decimal sign.');
const words = z.string().trim().min(1, 'Say what it is for.').max(200, 'At most 200 signs.');
const receipt = z.string().trim().min(1, 'Write the number of the receipt.').max(40, 'At most 40 signs.');

export const howPaid = ['cash', 'card', 'transfer', 'other'] as const;
export const howAgreed = ['phone', 'paper', 'present'] as const;

export const addedLine = z.object({ words, amountMinor, why: sentence });
/** Lines of the accepted estimate by their place, and lines that it does not have. */
export const newCharges = z.object({
  key,
  visit: id,
  estimateLines: z.array(z.int().min(0).max(100)).max(100).default([]),
  added: z.array(addedLine).max(30).default([]),
});
export const newPayment = z.object({ key, visit: id, kind: z.enum(['payment', 'refund']), amountMinor, day: localDay, how: z.enum(howPaid), person: id, receipt });
/** The payer agrees to pay this much for the visit, all in all. */
export const newAgreement = z.object({ key, visit: id, amountMinor, person: id, how: z.enum(howAgreed) });
export const newReversal = z.object({ key, entry: id, why: sentence });
export const newStatement = z.object({ key });

export const feeKinds = ['charge', 'payment', 'refund', 'agreement', 'reversal'] as const;
export const feeEntry = z.object({
  id,
  kind: z.enum(feeKinds),
  words: z.string(),
  amountMinor: z.int(),
  /** Why it is charged although the estimate does not have it. */
  why: z.string().nullable(),
  /** Paid on a day before the visit's. */
  prepaid: z.boolean(),
  day: localDay.nullable(),
  how: z.string().nullable(),
  person: z.string().nullable(),
  receipt: z.string().nullable(),
  at: z.string(),
  by: z.string(),
  reversed: z.object({ why: z.string(), by: z.string(), at: z.string() }).nullable(),
});
export type FeeEntry = z.infer<typeof feeEntry>;

export const visitFees = z.object({
  visit: id,
  day: localDay.nullable(),
  step: z.string(),
  where: z.string().nullable(),
  /** What was accepted, by whom and when; null as long as nobody has. */
  estimate: z
    .object({ amountMinor: z.int(), currency: z.string(), by: z.string(), how: z.string(), at: z.string(), lines: z.array(z.object({ line: z.int(), words: z.string(), amountMinor: z.int(), charged: z.boolean() })) })
    .nullable(),
  entries: z.array(feeEntry),
  agreedMinor: z.int(),
  chargedMinor: z.int(),
  paidMinor: z.int(),
  /** Charged, and more than the payer has agreed to. */
  notAgreedMinor: z.int(),
  openMinor: z.int(),
  /** What all this means, a sentence each. */
  says: z.array(z.string()),
});
export type VisitFees = z.infer<typeof visitFees>;

export const orderFees = z.object({
  order: id,
  accession: z.string(),
  dog: z.string(),
  zone: z.string(),
  today: localDay,
  currency: z.string(),
  payer: z.object({ id, name: z.string(), mail: z.boolean() }).nullable(),
  people: z.array(z.object({ id, name: z.string() })),
  /** After a death or harm no bill is sent until a vet says so. */
  silent: z.string().nullable(),
  visits: z.array(visitFees),
  chargedMinor: z.int(),
  paidMinor: z.int(),
  openMinor: z.int(),
  says: z.string(),
  statements: z.array(z.object({ id, at: z.string(), by: z.string(), to: z.string(), openMinor: z.int(), says: z.string() })),
  /** What was sent to a centre, and the bill in which it was found. */
  sent: z.array(z.object({ study: id, name: z.string(), centre: z.string(), sentOn: localDay, readOn: localDay.nullable(), feeMinor: z.int(), bill: z.object({ id, number: z.string() }).nullable() })),
  /** The dogs that were booked in the same call have one payer. */
  group: z.object({ id, dogs: z.int() }).nullable(),
});
export type OrderFees = z.infer<typeof orderFees>;

const sums = { acceptedMinor: z.int(), chargedMinor: z.int(), paidMinor: z.int(), openMinor: z.int() };
export const feesAsked = z.object({ show: z.enum(['open', 'uncharged', 'all']).default('open'), q: z.string().max(100).default(''), page });
export const feeRow = z.object({ order: id, accession: z.string(), dog: z.string(), payer: z.string().nullable(), visitDay: localDay.nullable(), ...sums });
export type FeeRow = z.infer<typeof feeRow>;
export const feeList = z.object({ currency: z.string(), rows: z.array(feeRow), more: z.boolean() });
export type FeeList = z.infer<typeof feeList>;

export const groupFees = z.object({ currency: z.string(), rows: z.array(z.object({ dog: z.string(), order: id, accession: z.string(), ...sums })), sum: z.object(sums) });
export type GroupFees = z.infer<typeof groupFees>;
