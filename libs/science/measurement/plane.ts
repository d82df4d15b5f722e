import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import { ScienceError } from '../error.js';

/** A place in a picture: x to the right, y downward, in pixels or millimetres. */
export interface Point {
  x: number;
  y: number;
}

export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const dot = (a: Point, b: Point) => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point) => a.x * b.y - a.y * b.x;
export const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
export const middle = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, p) => sum + p.x, 0) / points.length,
  y: points.reduce((sum, p) => sum + p.y, 0) / points.length,
});

/** The angle from one direction to another, 0 to π; by atan2, so that it is exact near 0 and near π. */
export const angleBetween = (a: Point, b: Point) => Math.atan2(Math.abs(cross(a, b)), dot(a, b));

/** @throws ScienceError POINT_NOT_FINITE, naming the point by its place in the list */
export function refuseNotFinite(points: readonly Point[]): void {
  const wrong = points.findIndex(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y));
  if (wrong === -1) return;
  const { x, y } = points[wrong]!;
  throw new ScienceError('POINT_NOT_FINITE', said('Point {number} has no place: x is {x}, y is {y}. Set it again.', { number: wrong + 1, x: String(x), y: String(y) }));
}

/** @throws ScienceError POINTS_SAME when two places that must differ are one */
export function refuseSame(a: Point, b: Point, what: Tellable): void {
  if (a.x === b.x && a.y === b.y) throw new ScienceError('POINTS_SAME', said('{what} lie on one another, so there is no line between them. Move one.', { what }));
}
