import { z } from 'zod';
import { enteredResult } from './actions/study.js';
import { id, sentence } from './common.js';

/** What every reading that comes in says, whichever way it comes; the values of its joints are read by the study's row. */
export const statedReading = z.object({
  package: z.string().trim().max(40).optional(),
  order: z.string().trim().max(40).optional(),
  study: z.string().trim().max(100).optional(),
  film: z.string().trim().toLowerCase().regex(/^[0-9a-f]{64}$/, 'A film is named by its SHA-256, 64 signs, as it stands in the package’s manifest.').optional(),
  number: enteredResult.shape.ref,
  readBy: z.string('Say who read the films.').trim().min(1, 'Say who read the films.').max(200, 'At most 200 signs.'),
  readOn: enteredResult.shape.readOn,
  dogNumber: enteredResult.shape.dogNumber,
  comment: enteredResult.shape.comment,
});
export type StatedReading = z.output<typeof statedReading>;

/** As JSON. The values are looked at once the study is known. */
const messageJoint = z.strictObject({
  value: z.union([z.number(), z.string().max(20)]).optional(),
  reason: z.string().max(40).optional(),
  findings: z.record(z.string().max(40), z.union([z.boolean(), z.string().max(40), z.number()])).optional(),
});
export const messageReading = z.strictObject({ ...statedReading.shape, joints: z.record(z.string().max(40), messageJoint) });
export const FORMAT = 'cotyla-results-1';
export const MOST_READINGS = 100;
export const resultMessage = z.object({ format: z.literal(FORMAT), readings: z.array(z.unknown()).min(1).max(MOST_READINGS) });

export const outcomes = ['taken', 'alreadyThere', 'notTaken'] as const;
export type Outcome = (typeof outcomes)[number];
/** What became of one reading; `place` is its row in the file, or its place in the message, from 1. */
export const readingAnswer = z.object({ place: z.int(), number: z.string(), outcome: z.enum(outcomes), words: z.string(), asks: z.array(z.string()) });
export type ReadingAnswer = z.infer<typeof readingAnswer>;
export const deliveryAnswer = z.object({ delivery: id, at: z.string(), readings: z.array(readingAnswer) });
export type DeliveryAnswer = z.infer<typeof deliveryAnswer>;

const MOST_BYTES = 500_000;
export const MOST_ROWS = 500;
export const resultsFile = z.object({
  /** Whose readings they are; a reader’s own centre is known. */
  centre: z.uuid('Choose the centre whose readings these are.').optional(),
  name: z.string().trim().min(1).max(200),
  content: z.base64('The file did not come whole. Choose it again.').min(1, 'Choose a file.').max(Math.ceil(MOST_BYTES / 3) * 4, 'The file is too large. Take it apart into files of at most 500 rows.'),
});
export type ResultsFile = z.infer<typeof resultsFile>;
export const resultsFileTaken = resultsFile.extend({ hash: z.string().regex(/^[0-9a-f]{64}$/) });

export const previewRow = z.object({
  row: z.int(),
  state: z.enum(['ready', 'alreadyThere', 'wrong']),
  /** As the file has it. */
  reference: z.string(),
  number: z.string(),
  readBy: z.string(),
  /** What it would be. */
  study: z.string().nullable(),
  order: z.object({ id, accession: z.string(), dog: z.string() }).nullable(),
  joints: z.array(z.object({ name: z.string(), words: z.string() })),
  dog: z.string().nullable(),
  words: z.string(),
  asks: z.array(z.string()),
});
export type PreviewRow = z.infer<typeof previewRow>;
export const filePreview = z.object({
  hash: z.string(),
  /** Of a workbook, the sheet that was read, and how many sheets it has beside. */
  sheet: z.object({ name: z.string(), others: z.int() }).nullable(),
  rows: z.array(previewRow),
});
export type FilePreview = z.infer<typeof filePreview>;

/** A reading of a message that led nowhere. */
export const leftReading = z.object({ id, at: z.string(), centre: z.string(), said: z.array(z.object({ what: z.string(), words: z.string() })), words: z.string(), order: z.object({ id, accession: z.string() }).nullable() });
export type LeftReading = z.infer<typeof leftReading>;
export const setAsideReading = z.object({ why: sentence });

export const centreKey = z.object({ id, centre: z.string(), at: z.string(), by: z.string(), endedAt: z.string().nullable(), lastUsedAt: z.string().nullable(), lastRefusedAt: z.string().nullable(), /** It was sealed with a key that the server does not have any more. */ secretLost: z.boolean() });
export type CentreKeyRow = z.infer<typeof centreKey>;
export const newKey = z.object({ centre: id });
/** The only time that a secret is shown. */
export const keyMade = z.object({ key: id, secret: z.string() });
export type KeyMade = z.infer<typeof keyMade>;

export const resultsInScreen = z.object({
  centres: z.array(z.object({ id, name: z.string() })),
  /** Null for who makes none. */
  keys: z.object({ centres: z.array(z.object({ id, name: z.string() })), rows: z.array(centreKey), address: z.string() }).nullable(),
  uploads: z.boolean(),
  /** A page of them. */
  left: z.object({ rows: z.array(leftReading), more: z.boolean() }),
});
export type ResultsInScreen = z.infer<typeof resultsInScreen>;
