import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { z } from 'zod';
import { statedReading, type StatedReading } from '#libs/contracts/results-in';
import type { Joint } from '#libs/contracts/common';
import type { Protocol } from '#libs/science/protocols/types';

/** A field as it came, for people. */
export interface AsCame { what: string; words: string }

/** One reading as it came: what it names, and its joints, which only the study's row can read. */
export interface Stated {
  place: number;
  reading: StatedReading;
  joints: (protocol: Protocol) => { joints: Joint[]; problems: Tellable[] };
  said: AsCame[];
}

/** One that cannot be meant, whatever its study. */
export interface Unread { place: number; told: Tellable[]; said: AsCame[] }
export type Read = Stated | Unread;

export const isStated = (read: Read): read is Stated => 'reading' in read;

/** What each field is called where people read it; the heads of a file too. */
export const fieldNames = {
  package: 'Package', order: 'Order', study: 'Study', film: 'Film', number: 'Number', readBy: 'Read by', readOn: 'Read on', dogNumber: 'Dog number', comment: 'Comment',
} as const satisfies Record<keyof StatedReading, string>;

/** The common part, checked; or all that is wrong with it. */
export function readStated(input: Record<string, unknown>, schema: z.ZodType<StatedReading> = statedReading): { reading: StatedReading } | { told: Tellable[] } {
  const parsed = schema.safeParse(input);
  if (parsed.success) {
    const { data } = parsed;
    if (Object.values(data).some((v) => typeof v === 'string' && /\0|\p{Surrogate}/u.test(v))) return { told: [said('It holds a sign that cannot be kept. Write it again without.')] };
    if (!data.package && !data.order) return { told: [said('Name the package (P-…) or the order number. A reading is never matched by a dog’s or a person’s name.')] };
    return { reading: data };
  }
  return { told: toldOf(parsed.error.issues) };
}

type Issue = z.core.$ZodIssue;

/** Everything that is wrong, each once and with the name of its field. */
export function toldOf(issues: Issue[]): Tellable[] {
  const all = issues.map((issue): Tellable => {
    const [field, ...rest] = issue.path.map(String);
    const why = issueWords(issue);
    if (field === undefined) return said('The reading: {why}', { why });
    return said('{field}: {why}', { field: [fieldNames[field as keyof StatedReading] ?? field, ...rest].join(', ').slice(0, 120), why });
  });
  return [...new Map(all.map((one) => [JSON.stringify(one), one])).values()].slice(0, 12);
}

/** Our own words where the contract has some; the catalogue has all of those. */
function issueWords(issue: Issue): Tellable {
  if (issue.message.endsWith('.')) return said(issue.message) as Tellable;
  if (issue.message.endsWith('received undefined')) return missing;
  if (issue.code === 'unrecognized_keys') return said('{names} is not known here.', { names: issue.keys.slice(0, 5).map((k) => `“${k.slice(0, 60)}”`).join(', ') });
  if (issue.code === 'too_big') return said('it is too long; at most {most}.', { most: String(issue.maximum) });
  if (issue.code === 'too_small') return missing;
  return said('it is not of the kind that belongs there.');
}

const missing: Tellable = said('it is missing.');

const MOST_SIGNS = 300;
/** Long and broken text is cut: it is for eyes, and the sender has it whole. */
export const asCame = (what: string, value: unknown): AsCame[] =>
  value === undefined || value === null || value === '' ? [] : [{ what: keepable(what, 60), words: keepable(typeof value === 'string' ? value : JSON.stringify(value), MOST_SIGNS) }];

const keepable = (text: string, most: number): string => text.slice(0, most).replaceAll(/\0|\p{Surrogate}/gu, '\ufffd');
