import { z } from 'zod';
import { id, localDay } from '../common.js';
import { road } from './order.js';

export const boardRow = z.object({
  order: id,
  visit: id,
  accession: z.string(),
  start: z.string(),
  room: z.string(),
  dog: z.string(),
  breed: z.string(),
  transponder: z.string().nullable(),
  /** Operator, vet, nurse, by name. */
  staff: z.array(z.string()),
  owner: z.string(),
  phone: z.string(),
  studies: z.array(z.string()),
  step: z.string(),
  road,
  waitsForMe: z.boolean(),
  over: z.boolean(),
});
export type BoardRow = z.infer<typeof boardRow>;
export const dayBoard = z.object({ day: localDay, today: localDay, now: z.string(), zone: z.string(), /** Images in the tray of the practice. */ unmatched: z.int(), /** Readings of messages that nobody has seen to. */ readingsLeft: z.int(), counts: z.object({ visits: z.int(), home: z.int(), here: z.int(), toCome: z.int(), ended: z.int(), waiting: z.int(), forMe: z.int() }), rows: z.array(boardRow), tasks: z.array(z.object({ order: id, accession: z.string(), dog: z.string(), title: z.string(), rest: z.string(), forMe: z.boolean() })) });
export type DayBoard = z.infer<typeof dayBoard>;

export const searchReply = z.object({ dogs: z.array(z.object({ id, name: z.string(), line: z.string() })), orders: z.array(z.object({ id, accession: z.string(), line: z.string() })) });
export type SearchReply = z.infer<typeof searchReply>;

const counted = z.object({ count: z.int(), interval: z.object({ lower: z.number(), upper: z.number() }).nullable() });

/** The scheme lead's first page: counts and causes, no names of owners, no ranking. */
export const schemeScreen = z.object({
  scheme: z.string(),
  asOf: z.string(),
  overdue: z.array(z.object({ accession: z.string(), practice: z.string(), centre: z.string(), study: z.string(), clock: z.string(), dueDay: localDay, cause: z.string().nullable() })),
  /** The codes are what the list behind a number is asked for by. */
  steps: z.array(z.object({ code: z.string(), protocol: z.string(), at: z.string(), step: z.string(), count: z.int() })),
  imagedNotSent: z.int(),
  incidents: z.array(z.object({ accession: z.string(), practice: z.string(), study: z.string(), what: z.string(), openedOn: localDay, closedOn: localDay.nullable() })),
  /** Over the whole scheme, from `since` on; a 95 % interval. With no sedated dog there is nothing to say yet. */
  harm: z.object({ sedated: z.int(), since: z.string().nullable(), diedInCare: counted, harmed: counted }),
  practices: z.array(z.object({ name: z.string(), place: z.string(), open: z.int(), accredited: z.array(z.object({ staff: z.string(), protocol: z.string(), until: localDay })) })),
});
export type SchemeScreen = z.infer<typeof schemeScreen>;

export const mailboxRow = z.object({ id, at: z.string(), to: z.string(), subject: z.string(), attachments: z.int() });
export const mailboxScreen = z.object({ captured: z.boolean(), rows: z.array(mailboxRow), more: z.boolean() });
export type MailboxScreen = z.infer<typeof mailboxScreen>;
export const mailScreen = mailboxRow.extend({ from: z.string(), text: z.string(), html: z.string().nullable(), links: z.array(z.string()), files: z.array(z.object({ n: z.int(), name: z.string(), type: z.string(), size: z.int() })) });
export type MailScreen = z.infer<typeof mailScreen>;
