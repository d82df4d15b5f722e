import { ScienceError } from '../error.js';

/**
 * The share of dogs that change between the tighter and the looser half of their breed on a second look, 0 to ½:
 * ½ − asin(ICC)/π, for two equally noisy readings with a bivariate normal distribution.
 * It is an average over all dogs: one in the middle changes more often, one at an end hardly ever.
 * Source: Sheppard, Phil Trans R Soc A 1899;192:101.
 * @param icc intraclass correlation of repeated readings, 0 to 1
 * @throws ScienceError NOT_A_CORRELATION
 */
export function changeOfHalf(icc: number): number {
  return 0.5 - Math.asin(correlation(icc)) / Math.PI;
}

/** @throws ScienceError NOT_A_CORRELATION */
export function correlation(icc: number): number {
  if (!(icc >= 0 && icc <= 1)) throw new ScienceError('NOT_A_CORRELATION', `${icc} is not an intraclass correlation. Give the published one, from 0 to 1.`);
  return icc;
}
