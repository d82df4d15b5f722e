import { ScienceError } from '../error.js';

/** The 97.5th percentile of the normal distribution, for an interval of 95 %. */
const Z = 1.959963984540054;

export interface Interval { lower: number; upper: number }

/**
 * The 95 % score interval of a share of `k` among `n`. It never leaves 0 to 1, and 0 of n has an upper end:
 * that nothing has happened yet does not mean that nothing can.
 * Source: Wilson's score interval as method 3 of Newcombe, Stat Med 1998;17:857-872.
 */
export function wilson(k: number, n: number): Interval {
  if (!Number.isInteger(k) || !Number.isInteger(n) || n < 1 || k < 0 || k > n) throw new ScienceError('NOT_A_SHARE', `${k} of ${n} is not a share. Count whole cases among at least one.`);
  const share = k / n;
  const middle = share + Z ** 2 / (2 * n);
  const half = Z * Math.sqrt((share * (1 - share)) / n + Z ** 2 / (4 * n ** 2));
  const scale = 1 + Z ** 2 / n;
  return { lower: k === 0 ? 0 : (middle - half) / scale, upper: k === n ? 1 : (middle + half) / scale };
}
