import { normalDensity, normalQuantile } from '../distributions.js';
import { ScienceError } from '../error.js';

export interface Intensity {
  /** Mean of the chosen above the mean of all, in standard deviations; 0 when all are chosen. */
  i: number;
  /** Part of the variance that is missing among the chosen: i·(i − x). */
  k: number;
  /** Where the chosen end, in standard deviations from the mean towards them; −∞ when all are chosen. */
  x: number;
}

/**
 * Choosing the best share of an endless normal population.
 * Source: Falconer & Mackay, Introduction to Quantitative Genetics, 4th ed. 1996, Appendix Table A.
 * @param share 0 < share ≤ 1
 * @throws ScienceError NOT_A_SHARE_TO_CHOOSE
 */
export function intensity(share: number): Intensity {
  if (!(share > 0 && share <= 1)) throw new ScienceError('NOT_A_SHARE_TO_CHOOSE', `${share} is not a share to choose. Give more than 0 and at most 1.`);
  if (share === 1) return { i: 0, k: 0, x: -Infinity };
  const x = -normalQuantile(share);
  const i = normalDensity(x) / share;
  return { i, k: i * (i - x), x };
}

/**
 * The intensity of choosing the best `chosen` of exactly `n`: the mean of their expected normal order statistics.
 * Fewer animals give less than the same share of an endless population.
 * Source: order statistics, no approximation. Above the best animal that is left out the chosen are a choice from an
 * endless population, and the share above it has a beta distribution.
 * @param chosen whole, 1 to n  @param n whole, 1 or more
 * @throws ScienceError NOT_A_CHOICE
 */
export function intensityOf(chosen: number, n: number): number {
  if (!Number.isInteger(n) || !Number.isInteger(chosen) || chosen < 1 || chosen > n) throw new ScienceError('NOT_A_CHOICE', `${chosen} of ${n} cannot be chosen. Give whole animals, at least one and at most as many as there are.`);
  return chosen === n ? 0 : meanOverBeta(chosen + 1, n - chosen, (share) => intensity(share).i);
}

/** The mean of f over a beta distribution, summed on the logit scale: there its two tails fall off evenly, and the step cancels out. */
function meanOverBeta(a: number, b: number, f: (x: number) => number): number {
  const steps = 1_000;
  const reach = Math.max(12 * Math.sqrt(1 / a + 1 / b), 30 / Math.min(a, b));
  const mode = Math.log(a / b);
  const logDensity = (logit: number) => -a * Math.log1p(Math.exp(-logit)) - b * Math.log1p(Math.exp(logit));
  let [sum, weights] = [0, 0];
  for (let j = 0; j <= steps; j++) {
    const logit = mode + reach * ((2 * j) / steps - 1);
    const weight = Math.exp(logDensity(logit) - logDensity(mode));
    weights += weight;
    if (weight > 0) sum += weight * f(1 / (1 + Math.exp(-logit)));
  }
  return sum / weights;
}
