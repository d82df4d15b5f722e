import { ScienceError } from '../error.js';
import { type Histogram, dogsIn, inSteps } from './histogram.js';

export interface Moments { n: number; mean: number; sd: number }

/**
 * Number, mean and standard deviation (n − 1) of a group, in the value's unit.
 * @throws ScienceError TOO_FEW below two dogs
 */
export function moments(group: Histogram): Moments {
  const n = dogsIn(group);
  if (n < 2) throw new ScienceError('TOO_FEW', `${n} dogs have no spread. At least two are needed.`);
  const mean = sumOver(group, (x) => x) / n;
  return { n, mean, sd: Math.sqrt(sumOver(group, (x) => (x - mean) ** 2) / (n - 1)) };
}

/** The sum of a function over all dogs of a group. */
export function sumOver({ scale, counts }: Histogram, f: (value: number) => number): number {
  const first = inSteps(scale.min, scale.decimals);
  return counts.reduce((sum, count, i) => (count === 0 ? sum : sum + count * f((first + i) / 10 ** scale.decimals)), 0);
}
