import { ScienceError } from '../error.js';

/**
 * How far the mean moves in one generation towards what is chosen: h²·σ·(mean intensity of the two sexes), in the
 * unit of `sd`. Choosing is by the dog's own value.
 * Source: the breeder's equation, Falconer & Mackay, Introduction to Quantitative Genetics, 4th ed. 1996.
 * @param heritability 0 to 1  @param sd standard deviation of the value, above 0
 * @throws ScienceError NOT_A_HERITABILITY, NOT_A_SPREAD
 */
export function response(heritability: number, sd: number, intensities: { dogs: number; bitches: number }): number {
  if (!(heritability >= 0 && heritability <= 1)) throw new ScienceError('NOT_A_HERITABILITY', `${heritability} is not a heritability. Give the published one, from 0 to 1.`);
  if (!(sd > 0 && sd < Infinity)) throw new ScienceError('NOT_A_SPREAD', `${sd} is not a standard deviation. It is above 0 in the unit of the value.`);
  return (heritability * sd * (intensities.dogs + intensities.bitches)) / 2;
}

/**
 * What choosing by one trait moves in another, as a part of what choosing by the other itself would move it at the same
 * intensity: √h²(chosen)·r(genetic)/√h²(other). The sign is that of the genetic correlation.
 * Source: Falconer & Mackay, as above, correlated response.
 * @throws ScienceError NOT_A_HERITABILITY, NOT_A_CORRELATION
 */
export function correlatedResponse(chosen: number, other: number, geneticCorrelation: number): number {
  if (!(chosen >= 0 && chosen <= 1 && other > 0 && other <= 1)) throw new ScienceError('NOT_A_HERITABILITY', `${chosen} and ${other} are not two heritabilities. Give published ones up to 1; the second must be above 0.`);
  if (!(Math.abs(geneticCorrelation) <= 1)) throw new ScienceError('NOT_A_CORRELATION', `${geneticCorrelation} is not a genetic correlation. Give −1 to 1.`);
  return (Math.sqrt(chosen) * geneticCorrelation) / Math.sqrt(other);
}
