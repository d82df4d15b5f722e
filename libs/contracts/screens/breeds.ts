import { z } from 'zod';
import { id, localDay } from '../common.js';

const interval = z.object({ lower: z.number(), upper: z.number() });
const share = z.object({ share: z.number(), interval });

/** What a lead writes down of the births of one year. No number takes back what was said before. */
export const birthsSaid = z.object({
  year: z.int('A year has four digits, like 2021.').min(1970, 'A year from 1970 on.').max(2200, 'That year is still to come.'),
  born: z.int('Whole pups, please.').min(0, 'Not fewer than none.').max(1_000_000, 'At most a million.').nullable(),
  source: z.string().trim().min(3, 'Say where the number comes from, so that others can look.').max(300, 'At most 300 signs.'),
});
export type BirthsSaid = z.infer<typeof birthsSaid>;

const births = z.object({ born: z.int().nullable(), source: z.string(), day: localDay, byName: z.string() });

/** Of those born, how many are in the set. */
const screened = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('known'), born: z.int(), share: z.number(), interval }),
  z.object({ kind: z.literal('moreThanBorn'), born: z.int() }),
  z.object({ kind: z.literal('notKnown'), years: z.array(z.int()) }),
]);

/** The sets in force, and the last time that sets were frozen. */
export const breedList = z.object({
  last: z.object({ day: localDay, byName: z.string(), frozen: z.int(), waiting: z.int() }).nullable(),
  sets: z.array(z.object({ id, breed: z.string(), study: z.string(), age: z.string(), n: z.int(), frozenOn: localDay })),
});
export type BreedList = z.infer<typeof breedList>;

/** A breed as it was counted on one day. Nothing of fewer dogs than may be shown, and no dog. */
export const breedPicture = z.object({
  id, breed: z.string(), study: z.string(), age: z.string(), n: z.int(), frozenOn: localDay, fromYear: z.int(), toYear: z.int(),
  /** Below 120 dogs. */
  warning: z.boolean(),
  /** X-rayed and never sent; null where they are fewer than five. */
  unsent: z.int().nullable(),
  /** Of those X-rayed, who was sent; null as above. */
  sent: share.nullable(),
  senders: z.object({ litter: z.int(), chosen: z.int() }).nullable(),
  /** Null below twenty dogs. */
  values: z.object({
    name: z.string(), unit: z.string(), decimals: z.int(),
    /** For the dog and for each joint, in the order of `heads`. */
    heads: z.array(z.string()),
    quantiles: z.array(z.object({ words: z.string(), figures: z.array(z.object({ value: z.number(), interval: interval.nullable() })) })),
    /** Share of dogs at or below a value, with its interval. */
    curve: z.array(z.object({ value: z.number(), share: z.number(), lower: z.number(), upper: z.number() })),
    years: z.array(z.object({ from: z.int(), to: z.int(), n: z.int(), median: z.number(), interval: interval.nullable(), screened })),
    trend: z.object({ perYear: z.number(), interval, from: z.int(), to: z.int(), n: z.int(), screened }).nullable(),
  }).nullable(),
  /** How many pups were born, newest year first, with what was said before it was corrected. */
  births: z.array(births.extend({ year: z.int(), before: z.array(births) })),
  /** For a study whose value is a grade; null below twenty dogs or for a measure. */
  grades: z.array(z.object({ grade: z.string(), n: z.int(), interval })).nullable(),
});
export type BreedPicture = z.infer<typeof breedPicture>;
