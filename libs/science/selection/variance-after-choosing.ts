import { ScienceError } from '../error.js';

export interface Variances { genetic: number; environment: number }

/** k of either sex, from `intensity`. */
export interface Reduction { dogs: number; bitches: number }

/**
 * The genetic variance of the next generation: half of what is left among the chosen parents, and half of what there was
 * before anybody chose, which every mating deals out anew. Inbreeding is left out.
 * Source: Bulmer, Am Nat 1971;105:201-211 (from memory); figures checked with two programs.
 * @param now this generation  @param base genetic variance before any choosing, above 0
 * @throws ScienceError NOT_A_VARIANCE
 */
export function varianceAfterChoosing(now: Variances, base: number, k: Reduction): Variances {
  if (!(now.genetic > 0 && now.environment >= 0 && base > 0)) throw new ScienceError('NOT_A_VARIANCE', `${now.genetic}, ${now.environment} and ${base} are not three variances. Genetic ones are above 0.`);
  const heritability = now.genetic / (now.genetic + now.environment);
  const parents = now.genetic * (1 - heritability * ((k.dogs + k.bitches) / 2));
  return { genetic: parents / 2 + base / 2, environment: now.environment };
}
