import { wilson, type Interval } from './wilson.js';

/** Dogs of some birth years that are in a set. */
export interface BornBetween { from: number; to: number; n: number }

export type ShareScreened =
  | { kind: 'known'; born: number; share: number; interval: Interval }
  /** Dogs from elsewhere, or too low a number of births: no share can be told. */
  | { kind: 'moreThanBorn'; born: number }
  | { kind: 'notKnown'; years: number[] };

/**
 * How many of those born are in the set, with the 95 % interval for years like these. Of years that are told together
 * it is known only when the births of every one are, also of a year from which no dog is in the set.
 * @param births pups by birth year; a year that is missing is not known
 * @throws ScienceError NOT_A_SHARE when dogs or births are no whole numbers
 */
export function shareScreened({ from, to, n }: BornBetween, births: ReadonlyMap<number, number>): ShareScreened {
  const years = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const unknown = years.filter((year) => !births.has(year));
  if (unknown.length > 0) return { kind: 'notKnown', years: unknown };
  const born = years.reduce((sum, year) => sum + births.get(year)!, 0);
  return n > born ? { kind: 'moreThanBorn', born } : { kind: 'known', born, share: n / born, interval: wilson(n, born) };
}
