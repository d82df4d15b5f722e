/**
 * What may be said of a group of n dogs.
 * Below 5 nothing at all, as one dog could be told from it (frequency thresholds of 3 to 5: OECD glossary).
 * Below 20 no place: calculations may mislead (Vet Clin Pathol 2013, vcp.12065). Below 120 with a warning: at least 120
 * individuals are asked for by Geffré et al. Vet Clin Pathol 2009;38:288-298 and Le Boedec, Vet Clin Pathol 2019.
 */
export const FEWEST = { toSayAnything: 5, forAPlace: 20, withoutWarning: 120 } as const;

export type GroupSize = 'nothing' | 'countOnly' | 'withWarning' | 'full';

export function groupSize(n: number): GroupSize {
  if (n < FEWEST.toSayAnything) return 'nothing';
  if (n < FEWEST.forAPlace) return 'countOnly';
  return n < FEWEST.withoutWarning ? 'withWarning' : 'full';
}
