import { z } from 'zod';
import { languageCodes } from '#libs/words/languages';
import { answer, id, localDay, phone, question, sentence } from '../common.js';
import { standingView } from '../standing.js';

/** The owner's page behind the emailed link: one order, plain words, nothing of the room. */
const language = z.enum(languageCodes);

export const ownerPage = z.object({
  order: id,
  /** In which the page speaks. What the practice wrote itself names its own. */
  language,
  accession: z.string(),
  version: z.int(),
  dog: z.object({ name: z.string(), breed: z.string(), sex: z.enum(['male', 'female']), transponder: z.string() }),
  practice: z.object({ name: z.string(), address: z.string(), phone: z.string(), zone: z.string() }),
  /** In the owner's words: here, asleep, pictures, awake, home. */
  status: z.string(),
  knots: z.array(z.object({ name: z.string(), state: z.enum(['done', 'here', 'toCome']) })),
  /** What is asked of the owner now, and what the practice or centre is doing. */
  toDo: z.array(z.object({ code: z.string(), words: z.string() })),
  waiting: z.array(z.string()),
  visit: z.object({ id, day: localDay, start: z.string(), advice: z.object({ title: z.string(), body: z.string(), language, approvedBy: z.string() }).nullable() }).nullable(),
  estimate: z.object({ lines: z.array(z.object({ words: z.string(), amountMinor: z.int() })), totalMinor: z.int(), currency: z.string(), accepted: z.boolean() }).nullable(),
  questions: z.array(z.object({ question, words: z.string(), answer: answer.nullable() })),
  consents: z.object({
    sedation: z.object({ answered: z.string().nullable(), title: z.string(), text: z.string(), version: z.string(), language }).nullable(),
    studies: z.array(z.object({ study: id, name: z.string(), centre: z.string(), answered: z.string().nullable(), text: z.string(), version: z.string() })),
    sendAll: z.object({ answered: z.string().nullable(), text: z.string(), version: z.string(), language }),
    statistics: z.object({ answered: z.string().nullable(), text: z.string(), version: z.string(), language }),
  }),
  results: z.array(z.object({
    study: z.string(), words: z.array(z.string()), dog: z.string(), readOn: z.string(),
    /** As the letter gave it. */
    standing: standingView.nullable(),
    /** Where a second reading can still be asked for; what it finds then stands. */
    appeal: z.object({ study: id, result: id, until: localDay }).nullable(),
  })),
  documents: z.array(z.object({ id, name: z.string(), at: z.string() })),
  /** The dog changed hands: on which side whoever looks stands, and whether it is waited for. */
  transfer: z.object({ party: z.enum(['seller', 'buyer']), day: localDay, said: z.boolean(), agreed: z.boolean() }).nullable(),
  /** Letters at any time, or only while somebody can be reached; in words, when that is, and null where that is always. */
  letters: z.object({ anyTime: z.boolean(), reachable: z.string().nullable() }),
  signer: z.object({ person: id, name: z.string(), role: z.enum(['owner', 'agent']) }),
});
export type OwnerPage = z.infer<typeof ownerPage>;

const yesNo = answer.exclude(['unknown']);
export const ownerAnswers = z.object({ visit: id, answers: z.partialRecord(question, answer), notes: z.partialRecord(question, z.string().trim().max(300)).default({}) });
export const ownerEstimate = z.object({ visit: id, totalMinor: z.int().min(0) });
/** One signature for the whole sheet; each purpose keeps its own yes or no. */
export const ownerConsents = z.object({
  visit: id.optional(),
  sedation: z.object({ answer: yesNo, emergency: z.object({ resuscitate: yesNo, limitMinor: z.int().min(0), number: phone, collectors: z.array(z.string().trim().min(1).max(120)).min(1).max(5) }).optional() }).optional(),
  studies: z.array(z.object({ study: id, answer: yesNo })).max(6).default([]),
  sendAll: yesNo.optional(),
  statistics: yesNo.optional(),
  signatureSvg: z.string().max(40_000).optional(),
  typedName: z.string().trim().min(1, 'Please write your name.').max(200),
});
export type OwnerConsents = z.infer<typeof ownerConsents>;
export const ownerAppeal = z.object({ study: id, result: id });
export const ownerLanguage = z.object({ language });
export const ownerLetterTime = z.object({ anyTime: z.boolean() });
export const ownerWithdraw = z.object({ purpose: z.enum(['sedation', 'study', 'sendAll', 'statistics']), subject: id.optional(), why: sentence.optional() });

/** Public page of a certificate: everything that is printed, and whether it still stands. No owner. */
export const certificateCheck = z.object({
  serial: z.string(),
  state: z.enum(['valid', 'amended', 'withdrawn']),
  says: z.string(),
  title: z.string(),
  issuedOn: localDay,
  issuer: z.string(),
  /** Of the paper. */
  language,
  /** Every label and value as it is printed, in the paper's order; `said` in the reader's language where it says it otherwise. */
  printed: z.array(z.object({ label: z.string(), value: z.string(), said: z.object({ label: z.string(), value: z.string() }).nullable() })),
  replacedBy: z.string().nullable(),
  limits: z.array(z.string()),
});
export type CertificateCheck = z.infer<typeof certificateCheck>;
