import { tQuantile } from '../distributions.js';
import { ScienceError } from '../error.js';
import { type Interval, Z95 } from '../population/wilson.js';

export type Pair = readonly [number, number];

export interface Limit { value: number; mayBe: Interval }

export interface BlandAltman {
  n: number;
  /** Mean of first − second: how much the one reads above the other. */
  difference: Limit;
  sd: number;
  /** Between these lie most differences of two readings of one film. */
  lower: Limit;
  upper: Limit;
}

/**
 * Limits of agreement of two readings of the same films, with 95 % intervals, in the unit of the values. A high
 * correlation is no agreement: it is high as soon as the films differ much.
 * Source: Bland & Altman, Lancet 1986;i:307-310; their standard error of a limit, √(3s²/n).
 * @param pairs at least three, all numbers finite
 * @param width standard deviations to either side, 1.96 for 95 of 100
 * @throws ScienceError TOO_FEW, NOT_A_NUMBER
 */
export function blandAltman(pairs: readonly Pair[], width = Z95): BlandAltman {
  const differences = checked(pairs).map(([a, b]) => a - b);
  const n = differences.length;
  const mean = differences.reduce((sum, d) => sum + d, 0) / n;
  const sd = Math.sqrt(differences.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (n - 1));
  const t = tQuantile(0.975, n - 1);
  const limit = (value: number, standardError: number): Limit => ({ value, mayBe: { lower: value - t * standardError, upper: value + t * standardError } });
  const ofLimit = Math.sqrt((3 * sd ** 2) / n);
  return { n, difference: limit(mean, sd / Math.sqrt(n)), sd, lower: limit(mean - width * sd, ofLimit), upper: limit(mean + width * sd, ofLimit) };
}

function checked(pairs: readonly Pair[]): readonly Pair[] {
  if (pairs.length < 3) throw new ScienceError('TOO_FEW', `${pairs.length} films read twice say nothing yet. At least 3 are needed.`);
  const at = pairs.findIndex((pair) => !pair.every(Number.isFinite));
  if (at >= 0) throw new ScienceError('NOT_A_NUMBER', `Film ${at + 1} has not two numbers (${pairs[at]!.join(' and ')}). Give both readings or leave the film out.`);
  return pairs;
}
