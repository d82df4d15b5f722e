import { binomialCdf } from '../distributions.js';
import { ScienceError } from '../error.js';
import { type Histogram, dogsIn } from './histogram.js';
import { valueAt } from './quantile.js';
import type { Interval } from './wilson.js';

export interface Places {
  /** Place of the lower limit among n in order, or null where so few dogs cannot have one. */
  lower: number | null;
  upper: number | null;
  /** The exact probability that the limits hold the quantile, which is at least the confidence where both exist. */
  coverage: number;
}

/**
 * Which two of n dogs in order hold a quantile between them, whatever the distribution:
 * P(X₍l₎ ≤ q < X₍u₎) is a sum of binomial probabilities, with at most half of the risk at either end.
 * Source: the order-statistic interval of textbooks on nonparametric statistics, from memory; values checked against two programs.
 * @param p 0 < p < 1  @param confidence 0 < c < 1
 * @throws ScienceError NOT_A_PROBABILITY, NO_DOGS
 */
export function placesOfQuantile(n: number, p: number, confidence = 0.95): Places {
  if (!(p > 0 && p < 1 && confidence > 0 && confidence < 1)) throw new ScienceError('NOT_A_PROBABILITY', `${p} with confidence ${confidence} has no interval. Give both between 0 and 1.`);
  if (!Number.isInteger(n) || n < 1) throw new ScienceError('NO_DOGS', `${n} dogs have no interval. At least one is needed.`);
  const risk = (1 - confidence) / 2;
  const below = (k: number) => (k < 0 ? 0 : k >= n ? 1 : binomialCdf(k, n, p));
  // Largest l with P(B < l) ≤ risk; smallest u with P(B ≥ u) ≤ risk.
  const l = firstWhere(0, n, (k) => below(k) > risk);
  const u = firstWhere(0, n + 1, (k) => 1 - below(k - 1) <= risk);
  return { lower: l === 0 ? null : l, upper: u > n ? null : u, coverage: (u > n ? 1 : below(u - 1)) - (l === 0 ? 0 : below(l - 1)) };
}

/**
 * The values at those places, of at least 95 %; null where the group is too small to have both, as at an end of few dogs.
 * @throws ScienceError NOT_A_PROBABILITY, NO_DOGS
 */
export function quantileInterval(group: Histogram, p: number): Interval | null {
  const { lower, upper } = placesOfQuantile(dogsIn(group), p);
  return lower === null || upper === null ? null : { lower: valueAt(group, lower), upper: valueAt(group, upper) };
}

function firstWhere(from: number, to: number, holds: (k: number) => boolean): number {
  let low = from;
  let high = to;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
