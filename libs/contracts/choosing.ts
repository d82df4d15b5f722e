import { z } from 'zod';
import { id, localDay } from './common.js';

const animals = z.int('Whole animals, please.').min(1, 'At least one of each sex.').max(1_000_000, 'At most a million.');
const of100 = z.number('Write a number from 1 to 100.').min(1, 'At least 1 of 100.').max(100, 'At most 100 of 100.');

/** What a scheme lead would choose, from a set that is frozen: of so many of each sex, so many of every 100. Nothing is stored. */
export const choosingAsked = z.object({ set: id, dogs: animals, dogsOf100: of100, bitches: animals, bitchesOf100: of100 });
export type ChoosingAsked = z.infer<typeof choosingAsked>;

export const choosingSet = z.object({
  id, breed: z.string(), study: z.string(), age: z.string(), n: z.int(), frozenOn: localDay,
  /** Why nothing can be reckoned from it; null where it can. */
  refused: z.string().nullable(),
});
export const choosingSets = z.array(choosingSet);
export type ChoosingSet = z.infer<typeof choosingSet>;

export const choosing = z.object({
  set: choosingSet,
  /** "distraction index" */
  measure: z.string(),
  unit: z.string(),
  decimals: z.int(),
  mean: z.number(),
  sd: z.number(),
  /** Fewer than 120 dogs. */
  warning: z.boolean(),
  /** X-rayed and never sent; null below five. */
  unsent: z.int().nullable(),
  senders: z.object({ litter: z.int(), chosen: z.int() }).nullable(),
  left: z.object({ dogs: z.int(), bitches: z.int(), effective: z.number(), inbreeding: z.number() }),
  /** A row for every published heritability, lowest first: mean of generation 1, 2, 3; shorter where the reckoning ends. */
  rows: z.array(z.object({ population: z.string(), heritability: z.number(), standardError: z.number().nullable(), source: z.string(), means: z.array(z.number()) })),
  /** Of the chosen, how many of 100 a second look would leave out; null where nobody has measured it. */
  secondLook: z.object({ dogs: z.number(), bitches: z.number(), source: z.string() }).nullable(),
  /** What choosing by grade would move in this value, as a part of choosing by the value itself. */
  byGrade: z.array(z.object({ population: z.string(), part: z.number(), source: z.string() })),
});
export type Choosing = z.infer<typeof choosing>;
