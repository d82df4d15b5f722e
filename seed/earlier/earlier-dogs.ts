import { addDays } from '#libs/pathway/days';
import type { Breed } from '../breeds.js';

/** A dog that was read before the year began: invented, as its name says, and so is every number. */
export interface EarlierDog {
  call: string;
  breed: Breed;
  sex: 'male' | 'female';
  born: string;
  imaged: string;
  left: number;
  right: number;
  /** Its films stayed at home. */
  unsent: boolean;
  /** Which whole litter it came with; null where somebody chose it. */
  litter: number | null;
}

interface Herd { breed: Breed; read: number; unsent: number; litters: number; mean: number; spread: number }

/** One breed with a full picture, one below 120 dogs, one too small for a place. */
export const herds: Herd[] = [
  { breed: 'Aldra Water Hound', read: 186, unsent: 19, litters: 6, mean: 0.46, spread: 0.13 },
  { breed: 'Karsby Spitz', read: 64, unsent: 7, litters: 0, mean: 0.37, spread: 0.1 },
  { breed: 'Upland Pointer', read: 13, unsent: 0, litters: 0, mean: 0.42, spread: 0.12 },
];

const YEARS = 7;
const PUPS = 6;
/** The invented breeds become a little tighter from one birth year to the next. */
const PER_YEAR = -0.008;

/** Dogs of the last years, all of them read before this one began. */
export function earlierDogs(year: number): EarlierDog[] {
  const draw = draws(20_260_101);
  return herds.flatMap(({ breed, read, unsent, litters, mean, spread }) =>
    Array.from({ length: read + unsent }, (_, i): EarlierDog => {
      const litter = i < litters * PUPS ? Math.floor(i / PUPS) : null;
      const cohort = litter ?? i % YEARS;
      const born = addDays(`${year - 2 - YEARS + (cohort % YEARS)}-02-03`, litter === null ? Math.floor(draw() * 250) : 40);
      const worse = Math.max(0.08, mean + PER_YEAR * (cohort % YEARS) + spread * normal(draw));
      const other = Math.max(0.05, worse - 0.08 * draw());
      const [left, right] = draw() < 0.5 ? [worse, other] : [other, worse];
      return {
        call: `Invented ${breed.slice(0, 2)}${String(i + 1).padStart(3, '0')}`, breed, sex: i % 2 ? 'male' : 'female', born, imaged: addDays(born, 400 + Math.floor(draw() * 260)),
        left: Number(left.toFixed(2)), right: Number(right.toFixed(2)), unsent: i >= read, litter,
      };
    }));
}

/** The same numbers at every start (a linear congruential generator, Park & Miller, Commun ACM 1988;31:1192-1201, from memory). */
function draws(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

const normal = (draw: () => number): number => Array.from({ length: 12 }, draw).reduce((sum, u) => sum + u, -6);
