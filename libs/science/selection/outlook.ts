import { ScienceError } from '../error.js';
import { type BreedingAnimals, breedingAnimals } from './breeding-animals.js';
import { intensity, intensityOf } from './intensity.js';
import { response } from './response.js';
import { type Variances, varianceAfterChoosing } from './variance-after-choosing.js';

/** Animals of one sex that there are to choose from, and the share of them, tightest first, that is bred from. */
export interface Choice { screened: number; share: number }

export interface Plan {
  /** Mean and standard deviation of the value among all that were read, in its unit. */
  mean: number;
  sd: number;
  /** Lowest value that there can be: the reckoning stops there. */
  least: number;
  dogs: Choice;
  bitches: Choice;
  /** How many generations ahead, 1 or more. */
  generations: number;
}

export interface Left extends BreedingAnimals {
  /** How far the chosen lie from the mean, in standard deviations, for so many animals. */
  intensity: { dogs: number; bitches: number };
}

/** What is left to breed from. @throws ScienceError NOT_A_SHARE_TO_CHOOSE, NO_BREEDING_ANIMALS, NOT_A_CHOICE */
export function leftToBreed({ dogs, bitches }: Pick<Plan, 'dogs' | 'bitches'>): Left {
  const animals = breedingAnimals(chosenOf(dogs), chosenOf(bitches));
  return { ...animals, intensity: { dogs: intensityOf(animals.dogs, dogs.screened), bitches: intensityOf(animals.bitches, bitches.screened) } };
}

/**
 * The mean of the value in the generations to come if these shares are bred from again and again, for one heritability.
 * Every generation is chosen with the same intensity from the same number of animals; the genetic variance falls as
 * Bulmer has it. Breeding for anything else, inbreeding and films that are not sent are left out, so it is the
 * most that choosing by this value alone could do.
 * @returns mean of generation 1, 2, …; it ends early where it would fall below the lowest value
 * @throws ScienceError as `leftToBreed`, NOT_A_HERITABILITY, NOT_A_SPREAD
 */
export function outlook(plan: Plan, heritability: number): number[] {
  const { dogs, bitches } = leftToBreed(plan).intensity;
  const k = { dogs: intensity(plan.dogs.share).k, bitches: intensity(plan.bitches.share).k };
  const base = heritability * plan.sd ** 2;
  let now: Variances = { genetic: base, environment: plan.sd ** 2 - base };
  let mean = plan.mean;
  const means: number[] = [];
  for (let generation = 1; generation <= plan.generations; generation++) {
    const variance = now.genetic + now.environment;
    mean -= response(now.genetic / variance, Math.sqrt(variance), { dogs, bitches });
    if (mean < plan.least) break;
    means.push(mean);
    if (now.genetic > 0) now = varianceAfterChoosing(now, base, k);
  }
  return means;
}

function chosenOf({ screened, share }: Choice): number {
  if (!Number.isInteger(screened) || screened < 1) throw new ScienceError('NO_BREEDING_ANIMALS', `${screened} animals of one sex is none to choose from. Give whole animals, at least one of each sex.`);
  intensity(share); // refuses what is no share
  return Math.round(share * screened);
}
