import { ScienceError } from '../error.js';
import { type Histogram, dogsIn, inSteps } from './histogram.js';

export type QuantileType = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

export interface Quantile {
  value: number;
  /** Which of the nine definitions it follows; programs differ, so it is said. */
  type: QuantileType;
}

/** Types 4 to 9 put their plotting positions at (k − α) / (n + 1 − α − β). */
const POSITIONS: Record<4 | 5 | 6 | 7 | 8 | 9, { alpha: number; beta: number }> = {
  4: { alpha: 0, beta: 1 },
  5: { alpha: 1 / 2, beta: 1 / 2 },
  6: { alpha: 0, beta: 0 },
  7: { alpha: 1, beta: 1 },
  8: { alpha: 1 / 3, beta: 1 / 3 },
  9: { alpha: 3 / 8, beta: 3 / 8 },
};

// A product such as 0.1 · 30 lies a hair beside the whole number that it is.
const FUZZ = 4 * Number.EPSILON;

/**
 * The value below which a share `p` of the group lies, in the value's unit.
 * Source: Hyndman & Fan, Am Stat 1996;50:361-365; type 7 where nothing else is asked for.
 * @param p 0 to 1, both included
 * @throws ScienceError NOT_A_PROBABILITY, NO_DOGS
 */
export function quantile(group: Histogram, p: number, type: QuantileType = 7): Quantile {
  if (!(p >= 0 && p <= 1)) throw new ScienceError('NOT_A_PROBABILITY', `${p} is not a share. Give a number from 0 to 1.`);
  const n = dogsIn(group);
  if (n === 0) throw new ScienceError('NO_DOGS', 'The group has no dogs yet, so it has no middle and no ends.');
  const { whole, part } = type <= 3 ? step(n, p, type as 1 | 2 | 3) : between(n, p, POSITIONS[type as keyof typeof POSITIONS]);
  const low = valueAt(group, Math.min(n, Math.max(1, whole)));
  if (part === 0) return { value: low, type };
  const high = valueAt(group, Math.min(n, Math.max(1, whole + 1)));
  return { value: part === 1 ? high : (1 - part) * low + part * high, type };
}

function between(n: number, p: number, { alpha, beta }: { alpha: number; beta: number }) {
  return split(alpha + p * (n + 1 - alpha - beta));
}

function step(n: number, p: number, type: 1 | 2 | 3) {
  const { whole, part } = split(type === 3 ? n * p - 0.5 : n * p);
  if (part > 0) return { whole, part: 1 };
  if (type === 2) return { whole, part: 0.5 };
  return { whole, part: type === 3 && Math.abs(whole) % 2 === 1 ? 1 : 0 };
}

function split(position: number) {
  const fuzz = FUZZ * Math.max(1, Math.abs(position));
  const whole = Math.floor(position + fuzz);
  return { whole, part: position - whole > fuzz ? position - whole : 0 };
}

/** The value of the dog that stands at a place when all are lined up from the lowest, 1 to n. */
export function valueAt({ scale, counts }: Histogram, place: number): number {
  let passed = 0;
  const cell = counts.findIndex((count) => (passed += count) >= place);
  return (inSteps(scale.min, scale.decimals) + cell) / 10 ** scale.decimals;
}
