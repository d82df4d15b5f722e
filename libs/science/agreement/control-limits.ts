import { binomialCdf, normalCdf, normalQuantile } from '../distributions.js';
import { ScienceError } from '../error.js';
import type { Interval } from '../population/wilson.js';

/** Cases among all of one unit: films sent back among films sent by one practice, or in one month. */
export interface Share { cases: number; of: number }

export interface Judged extends Share { share: number; limits: Interval; beyond: 'above' | 'below' | null }

export interface Chart { centre: number; points: Judged[] }

/**
 * Between which shares chance alone keeps a unit of size n, by the normal distribution.
 * @param centre 0 < centre < 1  @param z standard deviations to either side
 */
export function normalLimits(centre: number, n: number, z: number): Interval {
  const half = z * Math.sqrt((centre * (1 - centre)) / n);
  return { lower: Math.max(0, centre - half), upper: Math.min(1, centre + half) };
}

/**
 * The same from the binomial distribution itself, for small units: the fewest and the most cases that are no surprise,
 * as shares. Beyond lies only what has a probability of at most the tail. (Limits interpolated between whole cases
 * look smoother, and call 9 of 25 beyond 2.5 % at a centre of .2, which has a probability of 4.7 %.)
 */
export function exactLimits(centre: number, n: number, z: number): Interval {
  const tail = normalCdf(-z);
  return { lower: fewest(tail, n, centre) / n, upper: 1 - fewest(tail, n, 1 - centre) / n };
}

/** The least k with P(R ≤ k) above the tail. */
function fewest(tail: number, n: number, centre: number): number {
  let k = 0;
  while (k < n && binomialCdf(k, n, centre) <= tail) k++;
  return k;
}

/** The normal distribution does where at least 5 of either kind are expected: common practice, no source. */
const isSmall = (centre: number, n: number) => Math.min(centre, 1 - centre) * n < 5;

/**
 * A share followed over time, with limits of three standard deviations around all together.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2; exact limits where a unit is small.
 * @throws ScienceError NOT_A_SHARE, NOTHING_TO_COMPARE
 */
export const pChart = (units: readonly Share[]): Chart => chart(units, 3);

/**
 * Shares of units of different size beside the limits of chance around all together, as a funnel: no order of rank.
 * Source: Spiegelhalter, Stat Med 2005;24:1185-1202.
 * @param confidence 0.95 or 0.998, as the funnel is drawn
 * @throws ScienceError NOT_A_SHARE, NOTHING_TO_COMPARE
 */
export const funnel = (units: readonly Share[], confidence: number): Chart => chart(units, -normalQuantile((1 - confidence) / 2));

function chart(units: readonly Share[], z: number): Chart {
  const bad = units.find(({ cases, of }) => !Number.isInteger(cases) || !Number.isInteger(of) || of < 1 || cases < 0 || cases > of);
  if (bad) throw new ScienceError('NOT_A_SHARE', `${bad.cases} of ${bad.of} is not a share. Count whole cases among at least one.`);
  if (units.length === 0) throw new ScienceError('NOTHING_TO_COMPARE', 'There are no units to compare yet.');
  const centre = units.reduce((sum, { cases }) => sum + cases, 0) / units.reduce((sum, { of }) => sum + of, 0);
  return { centre, points: units.map((unit) => judged(unit, centre, z)) };
}

/** A share that is a limit is not beyond it, however its quotient rounds. */
const ROUNDING = 1e-12;

function judged({ cases, of }: Share, centre: number, z: number): Judged {
  const share = cases / of;
  const limits = centre === 0 || centre === 1 ? { lower: centre, upper: centre } : (isSmall(centre, of) ? exactLimits : normalLimits)(centre, of, z);
  return { cases, of, share, limits, beyond: share > limits.upper + ROUNDING ? 'above' : share < limits.lower - ROUNDING ? 'below' : null };
}
