import { ageOn } from '../age.js';
import type { LocalDay } from '../local-day.js';

/**
 * Ages that are counted together. Laxity rises from 4 to 6 months and falls until 12 (Taroni et al. Vet Comp Orthop
 * Traumatol 2018;31:321-326), so dogs under a year are kept apart; the border at two years, which keeps dogs that are
 * compared of about one age, is our own choice, no source.
 */
export const ageBands = ['months4to11', 'months12to23', 'months24up'] as const;
export type AgeBand = (typeof ageBands)[number];

export const ageBandWords: Record<AgeBand, string> = { months4to11: 'at 4 to 11 months', months12to23: 'at 12 to 23 months', months24up: 'at two years or older' };

/**
 * The band of a dog on its day of exposure; of a vague birth date the latest day counts.
 * @throws ScienceError NOT_A_DAY, BORN_LATER
 */
export function ageBandOn(latestBirth: LocalDay, exposed: LocalDay): AgeBand {
  const { months } = ageOn(latestBirth, exposed);
  return months < 12 ? 'months4to11' : months < 24 ? 'months12to23' : 'months24up';
}
