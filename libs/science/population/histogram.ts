import { ScienceError } from '../error.js';

/** Which values there can be: from `min` to `max` in steps of the last decimal. Any number rule of a protocol is one. */
export interface Scale { min: number; max: number; decimals: number }

/**
 * A group of dogs as counts: how many have each value of the scale. Plain data, so it goes to JSON and back as it is;
 * no dog is in it, and its size and the cost of asking it do not grow with the number of dogs.
 */
export interface Histogram {
  scale: Scale;
  /** Dogs at `min`, `min` + 1 step, … `max`. */
  counts: readonly number[];
}

/** How many dogs lie below a value and how many are exactly at it. */
export interface Rank { below: number; equal: number; n: number }

const MOST_VALUES = 100_000;

/** A value as whole steps of the last decimal: comparing those, 0.33 + 0.08 and 0.41 are equal. */
export const inSteps = (value: number, decimals: number): number => Math.round(value * 10 ** decimals);

/** @throws ScienceError NOT_A_SCALE */
export function emptyHistogram({ min, max, decimals }: Scale): Histogram {
  const values = inSteps(max, decimals) - inSteps(min, decimals) + 1;
  if (!Number.isInteger(decimals) || decimals < 0 || decimals > 6 || !(values >= 1 && values <= MOST_VALUES)) {
    throw new ScienceError('NOT_A_SCALE', `From ${min} to ${max} with ${decimals} decimals is no scale to count on. Give an end above the start, 0 to 6 decimals and at most ${MOST_VALUES} values.`);
  }
  return { scale: { min, max, decimals }, counts: Array<number>(values).fill(0) };
}

/** @throws ScienceError NOT_A_SCALE, NOT_ON_SCALE */
export function histogramOf(scale: Scale, values: readonly number[]): Histogram {
  const counts = [...emptyHistogram(scale).counts];
  for (const value of values) counts[cellOf(scale, value)]! += 1;
  return { scale: { min: scale.min, max: scale.max, decimals: scale.decimals }, counts };
}

/** @throws ScienceError NOT_ON_SCALE, NOT_DOGS */
export function add({ scale, counts }: Histogram, value: number, dogs = 1): Histogram {
  const cell = cellOf(scale, value);
  return { scale, counts: counts.with(cell, counts[cell]! + wholeDogs(dogs)) };
}

export const dogsIn = ({ counts }: Histogram): number => counts.reduce((sum, count) => sum + count, 0);

/**
 * The rank of any number, also of one between two values or off the scale. It is compared to one decimal more than
 * the values have, so that the end of an interval falls on a value only when it is meant to.
 * @throws ScienceError NOT_A_NUMBER
 */
export function rankOf({ scale, counts }: Histogram, x: number): Rank {
  if (!Number.isFinite(x)) throw new ScienceError('NOT_A_NUMBER', `${x} has no place among values. Give a number.`);
  const tenths = inSteps(x, scale.decimals + 1) - 10 * inSteps(scale.min, scale.decimals);
  const rank = { below: 0, equal: 0, n: 0 };
  counts.forEach((count, i) => {
    rank.n += count;
    if (10 * i < tenths) rank.below += count;
    else if (10 * i === tenths) rank.equal += count;
  });
  return rank;
}

/**
 * The share of the group below a value, 0 to 1, ties counted half.
 * @throws ScienceError NOT_A_NUMBER, NO_DOGS
 */
export function midRank(group: Histogram, x: number): number {
  const { below, equal, n } = rankOf(group, x);
  if (n === 0) throw new ScienceError('NO_DOGS', 'The group has no dogs yet, so nothing has a place in it.');
  return (below + equal / 2) / n;
}

function cellOf({ min, max, decimals }: Scale, value: number): number {
  const steps = inSteps(value, decimals);
  const cell = steps - inSteps(min, decimals);
  if (!Number.isFinite(value) || Math.abs(value * 10 ** decimals - steps) > 1e-6) {
    throw new ScienceError('NOT_ON_SCALE', `${value} is not a number with ${decimals} decimals. Round the reading as its protocol says.`);
  }
  if (cell < 0 || steps > inSteps(max, decimals)) throw new ScienceError('NOT_ON_SCALE', `${value} lies outside ${min} to ${max}. Check the reading.`);
  return cell;
}

function wholeDogs(dogs: number): number {
  if (!Number.isSafeInteger(dogs) || dogs < 0) throw new ScienceError('NOT_DOGS', `${dogs} is not a number of dogs. Count whole dogs from 0 up.`);
  return dogs;
}
