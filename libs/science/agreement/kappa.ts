import { ScienceError } from '../error.js';
import { type Interval, Z95 } from '../population/wilson.js';

export interface Kappa {
  /** Films that both readers graded. */
  n: number;
  /** Agreement found and agreement expected by chance, 0 to 1, weighted where weights are. */
  observed: number;
  expected: number;
  /** 1 is full agreement, 0 what chance would give; null where chance alone gives full agreement, as when both know one grade. */
  kappa: number | null;
  standardError: number | null;
  /** 95 %. */
  mayBe: Interval | null;
}

/** How far two grades are apart: every step alike, steps squared, or own weights (0 on the diagonal, higher is worse). */
export type Weights = 'none' | 'linear' | 'quadratic' | readonly (readonly number[])[];

/**
 * Cohen's kappa of two readers, or weighted kappa. With few films, or grades that hardly occur, it says little; the
 * names often given to its ranges are a convention and no test, and none is given here.
 * Source: Cohen, Psychol Bull 1968;70:213-220; standard error Fleiss, Cohen & Everitt, Psychol Bull 1969;72:323-327.
 * @param table films by grade of the first reader (rows) and of the second (columns), whole numbers, square
 * @throws ScienceError NOT_A_TABLE, NOT_WEIGHTS
 */
export function kappa(table: readonly (readonly number[])[], weights: Weights = 'none'): Kappa {
  const size = table.length;
  const n = checkedSum(table);
  const w = agreementWeights(weights, size);
  const p = table.map((row) => row.map((count) => count / n));
  const rows = p.map(sum);
  const columns = p.map((_, j) => sum(p.map((row) => row[j]!)));
  const over = (f: (i: number, j: number) => number) => sum(p.map((_, i) => sum(columns.map((__, j) => f(i, j)))));
  const observed = over((i, j) => w[i]![j]! * p[i]![j]!);
  const expected = over((i, j) => w[i]![j]! * rows[i]! * columns[j]!);
  if (1 - expected < 1e-12) return { n, observed, expected, kappa: null, standardError: null, mayBe: null };
  const value = (observed - expected) / (1 - expected);
  const byRow = p.map((_, i) => sum(columns.map((share, j) => share * w[i]![j]!)));
  const byColumn = columns.map((_, j) => sum(rows.map((share, i) => share * w[i]![j]!)));
  const spread = over((i, j) => p[i]![j]! * (w[i]![j]! - (byRow[i]! + byColumn[j]!) * (1 - value)) ** 2) - (value - expected * (1 - value)) ** 2;
  const standardError = Math.sqrt(Math.max(0, spread) / n) / (1 - expected);
  return { n, observed, expected, kappa: value, standardError, mayBe: { lower: Math.max(-1, value - Z95 * standardError), upper: Math.min(1, value + Z95 * standardError) } };
}

function agreementWeights(weights: Weights, size: number): number[][] {
  const apart = (i: number, j: number) => {
    if (weights === 'none') return Number(i !== j);
    if (weights === 'linear') return Math.abs(i - j);
    return weights === 'quadratic' ? (i - j) ** 2 : (weights[i]?.[j] ?? NaN);
  };
  const grid = Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => apart(i, j)));
  const most = Math.max(...grid.flat());
  if (!grid.flat().every((x) => x >= 0 && x < Infinity) || grid.some((row, i) => row[i] !== 0) || !(most > 0)) {
    throw new ScienceError('NOT_WEIGHTS', `These are no weights for ${size} grades. Give one for each pair of grades, 0 for the same grade and more the further they are apart.`);
  }
  return grid.map((row) => row.map((x) => 1 - x / most));
}

function checkedSum(table: readonly (readonly number[])[]): number {
  const n = sum(table.flat());
  if (table.length < 2 || table.some((row) => row.length !== table.length) || !table.flat().every((count) => Number.isInteger(count) && count >= 0) || n < 1) {
    throw new ScienceError('NOT_A_TABLE', 'This is no table of two readers. Give whole numbers of films, as many rows as columns, at least two grades and one film.');
  }
  return n;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
