import { z } from 'zod';
import { id, key, localDay, page, sentence } from './common.js';
import { amountMinor } from './fees.js';

const MOST_LINES = 500;
const sign = (most: number, missing: string) => z.string().trim().min(1, missing).max(most, `At most ${most} signs.`);

export const newBillLine = z.object({
  reference: sign(40, 'Write the order or package number, as the bill has it.'),
  study: sign(100, 'Write the study, as the bill has it.'),
  amountMinor,
});
export type NewBillLine = z.infer<typeof newBillLine>;

export const newCentreBill = z.object({
  key,
  centre: id,
  number: sign(60, 'Write the number of the bill.'),
  day: localDay,
  due: localDay.optional(),
  currency: z.string().regex(/^[A-Z]{3}$/, 'A currency is three capital letters.'),
  lines: z.array(newBillLine).min(1, 'A bill has at least one line.').max(MOST_LINES, `At most ${MOST_LINES} lines. Enter a longer bill in parts, as it is numbered.`),
});
export const billPreviewAsked = z.object({ centre: id, csv: z.string().min(1, 'Paste the lines of the bill, or choose its file.').max(200_000, 'At most 200,000 signs. Take the file apart.') });

/** What a person says about a line; it is taken back by saying so. */
export const saidOfLine = z.discriminatedUnion('says', [
  z.object({ says: z.literal('matched'), key, study: id, words: sentence.optional() }),
  z.object({ says: z.literal('disputed'), key, words: sentence }),
  z.object({ says: z.literal('undone'), key, words: sentence }),
]);
export type SaidOfLine = z.infer<typeof saidOfLine>;
export const saidOfBill = z.discriminatedUnion('says', [
  z.object({ says: z.literal('paid'), key, day: localDay }),
  z.object({ says: z.literal('unpaid'), key, words: sentence }),
  z.object({ says: z.literal('withdrawn'), key, words: sentence }),
]);
export type SaidOfBill = z.infer<typeof saidOfBill>;

/** Why a line fits no study that was sent. */
export const whyUnmatched = ['unknownNumber', 'otherStudy', 'neverSent', 'alreadyBilled', 'otherAmount'] as const;
export type WhyUnmatched = (typeof whyUnmatched)[number];

const billed = z.object({ study: id, order: id, accession: z.string(), name: z.string(), dog: z.string() });
export const billLine = z.object({
  id,
  place: z.int(),
  reference: z.string(),
  study: z.string(),
  amountMinor: z.int(),
  state: z.enum(['matched', 'disputed', 'unmatched']),
  /** The study that it is for, or would be. */
  of: billed.nullable(),
  byHand: z.boolean(),
  says: z.string(),
});
export type BillLine = z.infer<typeof billLine>;

export const centreBill = z.object({
  id,
  centre: z.object({ id, name: z.string() }),
  number: z.string(),
  day: localDay,
  due: localDay.nullable(),
  currency: z.string(),
  zone: z.string(),
  today: localDay,
  by: z.string(),
  at: z.string(),
  lines: z.array(billLine),
  sumMinor: z.int(),
  matchedMinor: z.int(),
  paid: localDay.nullable(),
  withdrawn: z.string().nullable(),
  says: z.string(),
  events: z.array(z.object({ place: z.int().nullable(), type: z.string(), words: z.string(), by: z.string(), at: z.string() })),
  /** Studies that this centre was sent, and that no line is for: one of them may be meant. */
  mayBe: z.array(billed.extend({ sentOn: localDay })),
});
export type CentreBill = z.infer<typeof centreBill>;

export const billsAsked = z.object({ page });
export const billLinesAsked = z.object({ show: z.enum(['unmatched', 'disputed', 'all']).default('unmatched'), page });

export const billRow = z.object({ id, centre: z.string(), number: z.string(), day: localDay, due: localDay.nullable(), lines: z.int(), unmatched: z.int(), disputed: z.int(), sumMinor: z.int(), paid: localDay.nullable(), withdrawn: z.boolean(), overdue: z.boolean() });
export type BillRow = z.infer<typeof billRow>;
export const billList = z.object({ currency: z.string(), rows: z.array(billRow), more: z.boolean() });
export const billLineRow = billLine.extend({ bill: id, number: z.string(), centre: z.string() });
export type BillLineRow = z.infer<typeof billLineRow>;
export const billLineList = z.object({ currency: z.string(), rows: z.array(billLineRow), more: z.boolean() });
/** Read by the centre and in none of its bills. */
export const unbilledRow = billed.extend({ centre: z.string(), sentOn: localDay, readOn: localDay, feeMinor: z.int(), says: z.string() });
export type UnbilledRow = z.infer<typeof unbilledRow>;
export const unbilledList = z.object({ currency: z.string(), rows: z.array(unbilledRow), more: z.boolean() });

export const billPreview = z.object({
  rows: z.array(newBillLine.extend({ row: z.int(), state: billLine.shape.state, says: z.string() })),
  errors: z.array(z.object({ row: z.int(), words: z.string() })),
  sumMinor: z.int(),
  currency: z.string(),
});
export type BillPreview = z.infer<typeof billPreview>;
