import { ScienceError } from '../error.js';

export interface FleissKappa {
  films: number;
  readers: number;
  /** 1 is full agreement, 0 what chance would give; null where only one grade was ever given. */
  kappa: number | null;
  /** The same for one grade against all others, in the order of the columns; null for a grade given always or never. */
  byGrade: (number | null)[];
}

/**
 * Agreement of the same number of readers, three or more, over films; who gave which grade does not matter.
 * Source: Fleiss, Psychol Bull 1971;76:378-382.
 * @param counts for each film how many readers gave each grade; every film has the same number of readers
 * @throws ScienceError NOT_A_TABLE
 */
export function fleissKappa(counts: readonly (readonly number[])[]): FleissKappa {
  const films = counts.length;
  const readers = sum(counts[0] ?? []);
  const grades = counts[0]?.length ?? 0;
  if (films < 2 || readers < 2 || grades < 2 || counts.some((row) => row.length !== grades || sum(row) !== readers || !row.every((c) => Number.isInteger(c) && c >= 0))) {
    throw new ScienceError('NOT_A_TABLE', 'This is no table of a reading round. Give at least two films and two grades, and the same number of readers, at least two, for every film.');
  }
  const shares = counts[0]!.map((_, j) => sum(counts.map((row) => row[j]!)) / (films * readers));
  /** Pairs of readers that differ over one grade, as a part of all pairs, mean over the films. */
  const differ = shares.map((_, j) => sum(counts.map((row) => row[j]! * (readers - row[j]!))) / (films * readers * (readers - 1)));
  const chance = shares.map((share) => share * (1 - share));
  const agreement = (found: number, expected: number) => (expected === 0 ? null : 1 - found / expected);
  return { films, readers, kappa: agreement(sum(differ), sum(chance)), byGrade: chance.map((expected, j) => agreement(differ[j]!, expected)) };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
