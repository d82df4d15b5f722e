import { said, type Said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import { refuseNotFinite, type Point } from './plane.js';

/** Millimetres from one row to the next and from one column to the next, as a DICOM file gives them. */
export interface Spacing {
  row: number;
  column: number;
}

export interface Picture {
  /** Pixels, whole numbers above 0. */
  width: number;
  height: number;
  /** Absent where the file says nothing: pixels are then taken as square and lengths stay in pixels. */
  spacing?: Spacing;
}

/** One point is taken to lie within a thousandth of the picture's diagonal (one standard deviation), about a screen's dot when the whole picture is shown: our own choice, no source. */
export const POINT_ERROR_SHARE = 1 / 1000;

/**
 * Checks a picture and gives what turns its pixels into millimetres, or leaves them pixels.
 * An index taken in pixels that are not square would be wrong.
 * @returns unit, the function, and the standard deviation of one placed point in that unit
 * @throws ScienceError PICTURE_SIZE, SPACING_BAD
 */
export function pictureScale({ width, height, spacing }: Picture): { unit: 'mm' | 'px'; scale: (point: Point) => Point; pointError: number } {
  if (![width, height].every((side) => Number.isInteger(side) && side > 0)) throw new ScienceError('PICTURE_SIZE', said('The picture is said to be {width} × {height} pixels. Upload it again.', { width: String(width), height: String(height) }));
  if (!spacing) return { unit: 'px', scale: (point) => point, pointError: POINT_ERROR_SHARE * Math.hypot(width, height) };
  const { row, column } = spacing;
  if (![row, column].every((mm) => Number.isFinite(mm) && mm > 0)) {
    throw new ScienceError('SPACING_BAD', said('The file says that its pixels are {column} × {row} mm, which cannot be. Ask for the file to be sent again, or measure on paper.', { column: String(column), row: String(row) }));
  }
  return { unit: 'mm', scale: ({ x, y }) => ({ x: x * column, y: y * row }), pointError: POINT_ERROR_SHARE * Math.hypot(width * column, height * row) };
}

/** @throws ScienceError POINT_NOT_FINITE, POINT_OUTSIDE with the place and the picture's size */
export function refuseOutside(points: readonly Point[], { width, height }: Picture, what: Said): void {
  refuseNotFinite(points);
  const wrong = points.findIndex(({ x, y }) => x < 0 || y < 0 || x > width || y > height);
  if (wrong === -1) return;
  const { x, y } = points[wrong]!;
  throw new ScienceError('POINT_OUTSIDE', said('{what}: point {number} at {x}, {y} lies outside the picture of {width} × {height}. Set it inside.', { what, number: wrong + 1, x: x.toFixed(0), y: y.toFixed(0), width: String(width), height: String(height) }));
}
