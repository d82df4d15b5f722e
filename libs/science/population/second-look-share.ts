import { normalCdf, normalQuantile } from '../distributions.js';
import { ScienceError } from '../error.js';
import { correlation } from './second-look-half.js';

export interface SecondLookOfShare {
  /** Share of all dogs that lie inside the chosen share on both looks. */
  bothInside: number;
  /** Share of all dogs that are inside on one look and outside on the other. */
  change: number;
  /** Of the dogs inside on the first look, the share that a second look puts outside. */
  leave: number;
}

/**
 * What a second look would change of who belongs to the tightest share of a breed, if both readings are equally noisy
 * and bivariate normal with correlation ICC. Not for a reading against the true place: that takes √ICC.
 * Source: Sheppard, Phil Trans R Soc A 1899;192:101 for one half; for any share Plackett's integral of the bivariate
 * normal distribution, Biometrika 1954;41:351-360 (from memory).
 * @param share 0 < share < 1  @param icc 0 to 1
 * @throws ScienceError NOT_A_PROBABILITY, NOT_A_CORRELATION
 */
export function secondLookOfShare(share: number, icc: number): SecondLookOfShare {
  if (!(share > 0 && share < 1)) throw new ScienceError('NOT_A_PROBABILITY', `${share} is not a share to choose. Give a number between 0 and 1.`);
  const bothInside = bothBelow(normalQuantile(share), correlation(icc));
  const change = Math.max(0, 2 * (share - bothInside));
  return { bothInside, change, leave: change / 2 / share };
}

/** P(X ≤ h, Y ≤ h) of two standard normal values with correlation rho, 0 to 1. With r = sin θ the integrand stays smooth up to 1. */
function bothBelow(h: number, rho: number): number {
  const end = Math.asin(rho);
  return normalCdf(h) ** 2 + integrate((theta) => Math.exp(-(h ** 2) / (1 + Math.sin(theta))), end) / (2 * Math.PI);
}

/** Simpson's rule from 0 to `end`; the integrand is smooth, so that 200 steps leave an error below 1e-10. */
function integrate(f: (x: number) => number, end: number): number {
  const steps = 200;
  const width = end / steps;
  let sum = f(0) + f(end);
  for (let i = 1; i < steps; i++) sum += f(i * width) * (i % 2 ? 4 : 2);
  return (sum * width) / 3;
}
