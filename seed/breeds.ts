import type { SchemeBreeds } from '#libs/steps/record/order-record';

/** Invented breeds, after invented places; none is meant to be like a real one. */
export const breeds = ['Aldra Water Hound', 'Bargeman’s Dog', 'Dellin Ratter', 'Karsby Spitz', 'Marsh Mastiff', 'Sornish Setter', 'Threnfold Shepherd', 'Upland Pointer'] as const;
export type Breed = (typeof breeds)[number];

export const veryLarge: Breed[] = ['Bargeman’s Dog', 'Marsh Mastiff'];

/** What the scheme adds to the protocols: its breeds, and an older youngest age for the two very large ones. */
export const schemeBreeds: SchemeBreeds = {
  names: [...breeds],
  older: { hipExtended: [{ breeds: [...veryLarge], youngest: { months: 18 }, source: 'Invented breeds; the age as for very large breeds in the protocol’s own list.' }] },
};

/** Two letters that open the numbers of each breed’s stud book. */
const BOOKS: Record<Breed, string> = {
  'Aldra Water Hound': 'AW', 'Bargeman’s Dog': 'BD', 'Dellin Ratter': 'DR', 'Karsby Spitz': 'KS',
  'Marsh Mastiff': 'MM', 'Sornish Setter': 'SS', 'Threnfold Shepherd': 'TS', 'Upland Pointer': 'UP',
};
export const studBookOf = (breed: Breed): string => BOOKS[breed];
