import { z } from 'zod';

const interval = z.object({ lower: z.number(), upper: z.number() });

/** A round in which several readers read the same films, pasted from a table. Nothing is stored. */
export const roundAsked = z.object({
  protocol: z.string().min(1, 'Please choose one.').max(40),
  /** A line for each film, a column for each reader, parted by tabs, semicolons or spaces. */
  table: z.string('Paste the table here.').trim().min(1, 'Paste the table here.').max(100_000),
});
export type RoundAsked = z.infer<typeof roundAsked>;

const found = z.object({ value: z.number().nullable(), mayBe: interval.nullable() });

export const round = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('measured'),
    films: z.int(), readers: z.int(), measure: z.string(), unit: z.string(), decimals: z.int(),
    /** Null where all films were read alike. */
    agreement: found.nullable(), consistency: found.nullable(), oneReader: found.nullable(), meanOfReaders: found.nullable(),
    within: z.object({ sd: z.number(), mayBe: interval, smallestRealChange: z.number() }),
    /** For two readers: limits of agreement, and a point for each film. */
    pair: z.object({ difference: found, lower: found, upper: found, points: z.array(z.object({ mean: z.number(), difference: z.number() })) }).nullable(),
  }),
  z.object({
    kind: z.literal('graded'),
    films: z.int(), readers: z.int(), grades: z.array(z.string()),
    observed: z.number(),
    /** Two readers: plain, and with steps counted once and squared. Three or more: Fleiss, and each grade against the others. */
    kappas: z.array(z.object({ what: z.string() }).extend(found.shape)),
  }),
]);
export type Round = z.infer<typeof round>;

const share = z.object({ cases: z.int(), of: z.int(), share: z.number(), limits: interval, beyond: z.enum(['above', 'below']).nullable() });

/** Films that were to be taken again while the dog slept, of those that were judged. */
const retakes = z.array(z.object({ study: z.string(), films: z.int(), again: z.int(), mayBe: interval.nullable(), reasons: z.array(z.object({ reason: z.string(), films: z.int() })) }));

/** How long results take, films that were taken again, and films that came back, over the whole scheme in three years. */
export const schemeTimes = z.object({
  asOf: z.string(),
  studies: z.array(z.object({
    study: z.string(),
    /** Null below five studies. */
    curve: z.object({
      n: z.int(), stillOpen: z.int(),
      steps: z.array(z.object({ day: z.int(), open: z.number(), mayBe: interval.nullable() })),
      openAt: z.array(z.int()),
      half: z.object({ time: z.int().nullable(), lower: z.int().nullable(), upper: z.int().nullable() }),
    }).nullable(),
  })),
  retakes,
  returned: z.object({
    centre: z.number(),
    quarters: z.array(share.extend({ quarter: z.string() })),
    /** A point for each practice, without its name and in no order of rank; none below five practices. */
    practices: z.array(share),
    /** Quarters and practices with fewer than five sendings. */
    hidden: z.object({ quarters: z.int(), practices: z.int() }),
  }).nullable(),
});
export type SchemeTimes = z.infer<typeof schemeTimes>;
