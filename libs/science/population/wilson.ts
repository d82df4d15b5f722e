import { ScienceError } from '../error.js';

/** The 97.5th percentile of the normal distribution, for an interval of 95 %. */
export const Z95 = 1.959963984540054;

export interface Interval { lower: number; upper: number }

/**
 * The 95 % score interval of a share of `k` among `n`. It never leaves 0 to 1, and 0 of n has an upper end:
 * that nothing has happened yet does not mean that nothing can.
 * Source: Wilson's score interval as method 3 of Newcombe, Stat Med 1998;17:857-872.
 * @throws ScienceError NOT_A_SHARE
 */
export function wilson(k: number, n: number): Interval {
  if (!Number.isInteger(k) || !Number.isInteger(n) || n < 1 || k < 0 || k > n) throw new ScienceError('NOT_A_SHARE', `${k} of ${n} is not a share. Count whole cases among at least one.`);
  return wilsonOfShare(k / n, n);
}

/**
 * The same for a share of 0 to 1 that need not be a whole count of `n`: half of those who are tied belong to it.
 * @throws ScienceError NOT_A_SHARE
 */
export function wilsonOfShare(share: number, n: number): Interval {
  if (!(share >= 0 && share <= 1) || !Number.isInteger(n) || n < 1) throw new ScienceError('NOT_A_SHARE', `${share} among ${n} is not a share. Give 0 to 1 of at least one.`);
  const half = Z95 * Math.sqrt((share * (1 - share)) / n + Z95 ** 2 / (4 * n ** 2));
  // The smaller root by the product of both: the difference would cancel for a rare thing among many.
  const smaller = (x: number) => x ** 2 / (x + Z95 ** 2 / (2 * n) + half);
  return { lower: smaller(share), upper: 1 - smaller(1 - share) };
}
