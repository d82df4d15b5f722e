import { FEWEST } from '#libs/science/population/group-size';
import { add, emptyHistogram, histogramOf, type Histogram } from '#libs/science/population/histogram';
import { partFigure, type PartFigure } from '#libs/science/population/part-figures';
import { readPool } from '#libs/science/population/pool';
import { trend, type Trend } from '#libs/science/population/trend';
import { yearParts } from '#libs/science/population/year-parts';

/** A counted dog as a set is made of it; values in whole steps, or places of grades. */
export interface CountedDog { dog: string; reading: string; bornYear: number; imagedYear: number; sender: string; dogValue: number; leftValue: number; rightValue: number }

/** How many dogs have each value, by its whole steps or the place of its grade. */
export type ValueCounts = Record<string, number>;

export interface SetContent {
  counts: { dog: ValueCounts; left: ValueCounts; right: ValueCounts };
  parts: {
    /** Null where one of the two is so small that it could be told. */
    senders: { litter: number; chosen: number } | null;
    years: ({ from: number; to: number } & PartFigure)[];
    trend: Trend | null;
  };
  fromYear: number;
  toYear: number;
}

/** What is frozen of the dogs of a set: counts, and figures of parts none of which is small. */
export function setContent(pool: string, dogs: CountedDog[]): SetContent {
  const imaged = dogs.map((d) => d.imagedYear);
  return {
    counts: { dog: countsOf(dogs.map((d) => d.dogValue)), left: countsOf(dogs.map((d) => d.leftValue)), right: countsOf(dogs.map((d) => d.rightValue)) },
    parts: { senders: sendersOf(dogs), ...figuresOf(pool, dogs) },
    fromYear: Math.min(...imaged), toYear: Math.max(...imaged),
  };
}

/** The counts as a histogram on the scale of the pool; undefined for grades, which are no measures. */
export function histogramOfCounts(pool: string, counts: ValueCounts): Histogram | undefined {
  const rule = readPool(pool)?.protocol.value;
  if (rule?.kind !== 'number') return undefined;
  return Object.entries(counts).reduce((group, [steps, n]) => add(group, valueOfSteps(Number(steps), rule.decimals), n), emptyHistogram(rule));
}

export const valueOfSteps = (steps: number, decimals: number): number => Number((steps / 10 ** decimals).toFixed(decimals));

function countsOf(values: number[]): ValueCounts {
  const counts: ValueCounts = {};
  for (const value of values) counts[value] = (counts[value] ?? 0) + 1;
  return counts;
}

function sendersOf(dogs: CountedDog[]): SetContent['parts']['senders'] {
  const litter = dogs.filter((d) => d.sender === 'litter').length;
  const senders = { litter, chosen: dogs.length - litter };
  return Object.values(senders).every((n) => n === 0 || n >= FEWEST.toSayAnything) ? senders : null;
}

function figuresOf(pool: string, dogs: CountedDog[]): Pick<SetContent['parts'], 'years' | 'trend'> {
  const rule = readPool(pool)?.protocol.value;
  if (rule?.kind !== 'number') return { years: [], trend: null };
  const value = (d: CountedDog) => valueOfSteps(d.dogValue, rule.decimals);
  const years = yearParts(dogs).map((part) => ({ from: part.from, to: part.to, ...partFigure(histogramOf(rule, part.dogs.map(value)), part.dogs.length) }));
  return { years, trend: trend(dogs.map((d) => ({ year: d.bornYear, value: value(d), dogs: 1 }))) };
}
