import type { z } from 'zod';
import { statedReading, type StatedReading } from '#libs/contracts/results-in';
import type { Joint } from '#libs/contracts/common';
import type { Protocol } from '#libs/science/protocols/types';

export interface Said { what: string; words: string }

/** One reading as it came: what it names, and its joints, which only the study's row can read. */
export interface Stated {
  place: number;
  reading: StatedReading;
  joints: (protocol: Protocol) => { joints: Joint[]; problems: string[] };
  /** As it came, for people. */
  said: Said[];
}

/** One that cannot be meant, whatever its study. */
export interface Unread { place: number; words: string; said: Said[] }
export type Read = Stated | Unread;

export const isStated = (read: Read): read is Stated => 'reading' in read;

/** What each field is called where people read it; the heads of a file too. */
export const fieldNames = {
  package: 'Package', order: 'Order', study: 'Study', film: 'Film', number: 'Number', readBy: 'Read by', readOn: 'Read on', dogNumber: 'Dog number', comment: 'Comment',
} as const satisfies Record<keyof StatedReading, string>;

/** The common part, checked; or one sentence for all that is wrong with it. */
export function readStated(input: Record<string, unknown>, schema: z.ZodType<StatedReading> = statedReading): { reading: StatedReading } | { words: string } {
  const parsed = schema.safeParse(input);
  if (parsed.success) {
    const { data } = parsed;
    if (Object.values(data).some((v) => typeof v === 'string' && /\0|\p{Surrogate}/u.test(v))) return { words: 'It holds a sign that cannot be kept. Write it again without.' };
    if (!data.package && !data.order) return { words: 'Name the package (P-…) or the order number. A reading is never matched by a dog’s or a person’s name.' };
    return { reading: data };
  }
  return { words: wordsOf(parsed.error.issues) };
}

type Issue = z.core.$ZodIssue;

/** Everything that is wrong, each with the name of its field. */
export const wordsOf = (issues: Issue[]): string => [...new Set(issues.map((i) => {
  const [field, ...rest] = i.path.map(String);
  const name = field === undefined ? 'The reading' : [fieldNames[field as keyof StatedReading] ?? field, ...rest].join(', ').slice(0, 120);
  return `${name}: ${issueWords(i)}`;
}))].slice(0, 12).join(' ');

/** Our own words where the contract has some. */
function issueWords(issue: Issue): string {
  if (issue.message.endsWith('.')) return issue.message;
  if (issue.message.endsWith('received undefined')) return 'it is missing.';
  if (issue.code === 'unrecognized_keys') return `${issue.keys.slice(0, 5).map((k) => `“${k.slice(0, 60)}”`).join(', ')} is not known here.`;
  if (issue.code === 'too_big') return `it is too long; at most ${issue.maximum}.`;
  if (issue.code === 'too_small') return 'it is missing.';
  return 'it is not of the kind that belongs there.';
}

const MOST_SIGNS = 300;
/** Long and broken text is cut: it is for eyes, and the sender has it whole. */
export const told = (what: string, value: unknown): Said[] =>
  value === undefined || value === null || value === '' ? [] : [{ what: keepable(what, 60), words: keepable(typeof value === 'string' ? value : JSON.stringify(value), MOST_SIGNS) }];

const keepable = (text: string, most: number): string => text.slice(0, most).replaceAll(/\0|\p{Surrogate}/gu, '\ufffd');
