import { z } from 'zod';
import { localDay } from './common.js';

/** Why a dog is set beside no others. */
export const noStanding = ['noValue', 'arthrosis', 'operated', 'viewsMissing', 'notMeasured', 'noConsent', 'noSet', 'tooFew'] as const;

/** Where a dog stood among its breed when its letter was released: kept with the letter, and never computed again for it. */
export const standing = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('place'),
    /** Places of every 20, from the tightest; both included. */
    from: z.int(),
    to: z.int(),
    n: z.int(),
    /** So few dogs that the places may still change. */
    warning: z.boolean(),
    breed: z.string(),
    /** "at 12 to 23 months" */
    age: z.string(),
    frozenOn: localDay,
    fromYear: z.int(),
    toYear: z.int(),
    /** X-rayed and never sent. */
    unsent: z.int(),
    /** Null where one of the two could be told. */
    senders: z.object({ litter: z.int(), chosen: z.int() }).nullable(),
    /** How the row is ordered: "tightest" and "loosest", and of what. */
    ends: z.object({ low: z.string(), high: z.string(), of: z.string() }),
    /** On a second look one dog in so many changes halves. */
    halvesOneIn: z.int(),
    /** Who measured how far two looks differ, in short. */
    source: z.string(),
  }),
  z.object({ kind: z.literal('none'), why: z.enum(noStanding), region: z.string(), n: z.int().nullable() }),
]);
export type Standing = z.infer<typeof standing>;
export type Place = Extract<Standing, { kind: 'place' }>;

/** The same with its words, as papers and pages show it. */
export const standingView = z.object({
  /** What the picture is drawn from; null where there is none, and the words say why. */
  line: z.object({ from: z.int(), to: z.int(), unsent: z.int(), low: z.string(), high: z.string(), described: z.string() }).nullable(),
  lead: z.string(),
  small: z.array(z.string()),
});
export type StandingView = z.infer<typeof standingView>;
