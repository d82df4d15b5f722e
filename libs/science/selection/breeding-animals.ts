import { ScienceError } from '../error.js';

export interface BreedingAnimals {
  dogs: number;
  bitches: number;
  /** The number of equally used animals, half of each sex, that would lose variety as fast. */
  effective: number;
  /** Rise of inbreeding in one generation, 0 to 1. */
  inbreeding: number;
}

/**
 * What is left to breed from, and how narrow that is: 4·d·b/(d + b), and 1/(2·effective) for inbreeding.
 * True only if all are used alike and unrelated; favourite sires make it narrower.
 * Source: Wright, Genetics 1931;16:97-159.
 * @param dogs whole, 1 or more  @param bitches whole, 1 or more
 * @throws ScienceError NO_BREEDING_ANIMALS
 */
export function breedingAnimals(dogs: number, bitches: number): BreedingAnimals {
  if (!Number.isInteger(dogs) || !Number.isInteger(bitches) || dogs < 1 || bitches < 1) throw new ScienceError('NO_BREEDING_ANIMALS', `From ${dogs} dogs and ${bitches} bitches nothing can be bred. At least one of each is needed.`);
  const effective = (4 * dogs * bitches) / (dogs + bitches);
  return { dogs, bitches, effective, inbreeding: 1 / (2 * effective) };
}
