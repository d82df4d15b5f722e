import type { Breed } from '../breeds.js';

/** What the lead wrote down of births: invented, as the sources say, and so is every number. Last words last. */
export interface InventedBirths { breed: Breed; yearsAgo: number; born: number; source: string }

const BOOK = 'Invented for the demo: there is no such book';

/** Of seven birth years that the earlier dogs have, oldest first; null where nobody has said it yet. */
const said: [Breed, (number | null)[]][] = [
  ['Aldra Water Hound', [141, 152, 149, 163, 158, 170, 166]],
  ['Karsby Spitz', [null, 58, 61, 55, 22, 49, 64]],
  ['Upland Pointer', [34, 31, 40, 36, 29, 33, 38]],
];
const OLDEST = 9;

export const births: InventedBirths[] = [
  ...said.flatMap(([breed, years]) => years.flatMap((born, i) => (born === null ? [] : [{ breed, yearsAgo: OLDEST - i, born, source: `${BOOK}, page ${i + 1}.` }]))),
  { breed: 'Aldra Water Hound', yearsAgo: 3, born: 171, source: `${BOOK}; a litter of five came in late.` },
];
