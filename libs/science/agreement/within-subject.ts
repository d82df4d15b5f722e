import { ScienceError } from '../error.js';
import { smallestRealChange } from '../protocols/second-look.js';
import { type Interval, Z95 } from '../population/wilson.js';
import { meanSquares } from './mean-squares.js';

export interface WithinSubject {
  films: number;
  /** Standard deviation of repeated readings of one film, in the unit of the values; of two readings √(Σd²/2n). */
  sd: number;
  mayBe: Interval;
  /** In 95 of 100 pairs two readings of one film differ by less: 1.96·√2·sd. */
  smallestRealChange: number;
}

/**
 * How far readings of the same film differ.
 * Source: Bland & Altman, Lancet 1986;i:307-310, repeatability; the interval by sd/√(2·degrees of freedom) from memory.
 * @param table a number for each film (rows) from each reader or look (columns); at least three films
 * @throws ScienceError TOO_FEW, NOT_A_TABLE
 */
export function withinSubject(table: readonly (readonly number[])[]): WithinSubject {
  if (table.length < 3) throw new ScienceError('TOO_FEW', `${table.length} films read more than once say nothing yet. At least 3 are needed.`);
  const { films, readers, within } = meanSquares(table);
  const sd = Math.sqrt(within);
  const half = (Z95 * sd) / Math.sqrt(2 * films * (readers - 1));
  return { films, sd, mayBe: { lower: Math.max(0, sd - half), upper: sd + half }, smallestRealChange: smallestRealChange(sd) };
}
