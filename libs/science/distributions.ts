import binomialCdfOf from '@stdlib/stats-base-dists-binomial-cdf';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { ScienceError } from './error.js';

// The distributions come from one library, which answers NaN where it cannot answer; here that is an error with a name.

/** P(Z ≤ x) of a standard normal Z. @throws ScienceError NOT_IN_DOMAIN */
export const normalCdf = (x: number): number => known(normalCdfOf(x, 0, 1), 'normal distribution', x);

/** The height of the standard normal curve at x. */
export const normalDensity = (x: number): number => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);

/** The x with P(Z ≤ x) = p, 0 < p < 1. @throws ScienceError NOT_IN_DOMAIN */
export const normalQuantile = (p: number): number => known(normalQuantileOf(p, 0, 1), 'normal quantile', p);

/** Student's t quantile with `df` > 0 degrees of freedom, 0 < p < 1. @throws ScienceError NOT_IN_DOMAIN */
export const tQuantile = (p: number, df: number): number => known(tQuantileOf(p, df), 't quantile', p, df);

/** F quantile with two numbers of degrees of freedom > 0, 0 < p < 1. @throws ScienceError NOT_IN_DOMAIN */
export const fQuantile = (p: number, df1: number, df2: number): number => known(fQuantileOf(p, df1, df2), 'F quantile', p, df1, df2);

/** P(X ≤ k) of X cases among n, each with probability p. @throws ScienceError NOT_IN_DOMAIN */
export const binomialCdf = (k: number, n: number, p: number): number => known(binomialCdfOf(k, n, p), 'binomial distribution', k, n, p);

function known(answer: number, what: string, ...at: number[]): number {
  if (!Number.isFinite(answer)) throw new ScienceError('NOT_IN_DOMAIN', `The ${what} has no finite value at ${at.join(', ')}. Give a probability between 0 and 1 and sizes above 0.`);
  return answer;
}
