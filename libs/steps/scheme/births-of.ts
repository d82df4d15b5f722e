import type { BreedPicture } from '#libs/contracts/screens/breeds';
import type { Tx } from '#libs/platform/database/db';
import type { Lead } from './scheme-screen.js';

type Births = BreedPicture['births'];
type Said = Births[number]['before'][number];

/** What was written down of a breed's births: the last word on each year, and the words before it. */
export async function birthsOf(tx: Tx, lead: Lead, breed: string): Promise<Births> {
  const [row] = await tx.$queryRaw<{ said: (Said & { year: number })[] }[]>`SELECT app.breed_births(${lead.scheme}::uuid, ${breed}) AS said`;
  return [...new Set(row!.said.map(({ year }) => year))].map((year) => {
    const [last, ...before] = row!.said.filter((said) => said.year === year).map(({ born, source, day, byName }): Said => ({ born, source, day, byName }));
    return { year, ...last!, before };
  });
}

export const knownBirths = (births: Births): Map<number, number> => new Map(births.flatMap(({ year, born }) => (born === null ? [] : [[year, born]])));
