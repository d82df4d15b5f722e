import { ScienceError } from '../error.js';

/** Mean squares of a table of films (rows) by readers (columns). */
export interface MeanSquares { films: number; readers: number; between: number; within: number; ofReaders: number; error: number }

/** @throws ScienceError NOT_A_TABLE */
export function meanSquares(table: readonly (readonly number[])[]): MeanSquares {
  const films = table.length;
  const readers = table[0]?.length ?? 0;
  if (films < 2 || readers < 2 || table.some((row) => row.length !== readers || !row.every(Number.isFinite))) {
    throw new ScienceError('NOT_A_TABLE', 'This is no table of a reading round. Give at least two films and two readers, and a number from every reader for every film.');
  }
  const all = mean(table.flat());
  const rows = table.map(mean);
  const columns = table[0]!.map((_, j) => mean(table.map((row) => row[j]!)));
  const between = readers * sum(rows.map((m) => (m - all) ** 2));
  const ofReaders = films * sum(columns.map((m) => (m - all) ** 2));
  const within = sum(table.flatMap((row, i) => row.map((x) => (x - rows[i]!) ** 2)));
  const error = sum(table.flatMap((row, i) => row.map((x, j) => (x - rows[i]! - columns[j]! + all) ** 2)));
  // What is left of rounding when all are alike is no difference.
  const rounding = 1e-24 * Math.max(...table.flat().map((x) => x ** 2));
  const meanSquare = (squares: number, df: number) => (squares / df <= rounding ? 0 : squares / df);
  return {
    films,
    readers,
    between: meanSquare(between, films - 1),
    within: meanSquare(within, films * (readers - 1)),
    ofReaders: meanSquare(ofReaders, readers - 1),
    error: meanSquare(error, (films - 1) * (readers - 1)),
  };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
const mean = (numbers: readonly number[]): number => sum(numbers) / numbers.length;
