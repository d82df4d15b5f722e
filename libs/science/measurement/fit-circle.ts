import { EigenvalueDecomposition, inverse, Matrix, solve } from 'ml-matrix';
import { said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import { arcCovered } from './arc-covered.js';
import { distance, middle, minus, refuseNotFinite, type Point } from './plane.js';
import { collinear, taubinCircle, type Circle } from './taubin-circle.js';

export interface FittedCircle extends Circle {
  /** Of centre x, centre y and radius, in this order, in the points' unit squared. */
  covariance: number[][];
  /** Root mean square distance of the points from the rim. */
  residual: number;
  /** Standard deviation of one point across the rim that the covariance rests on. */
  scatter: number;
  /** Degrees of rim that the points span, 0 to below 360. */
  arc: number;
  /** How many points. */
  n: number;
}

/** A rim of less than 5.7 degrees is taken for a line: our own choice, no source. */
const MOST_RADII = 10;
const STRAIGHT = 1e-9;
const ROUNDS = 200;
/** A step of this many radii changes no digit that is shown. */
const SETTLED = 1e-12;

/**
 * The circle with the least sum of squared distances to the points, from Taubin's circle by damped least squares.
 * Three points give the circle through them.
 * Source: geometric fit as in Gander, Golub, Strebel, BIT 1994;34:558-578.
 * @param points three or more different points of a rim, pixels or millimetres
 * @param pointError standard deviation of one placed point in the same unit, 0 or more; the scatter about the rim counts
 *   where it is larger, because few points can lie near a circle by chance and three always do
 * @throws ScienceError POINT_NOT_FINITE, CIRCLE_FEW_POINTS, CIRCLE_COLLINEAR, CIRCLE_RADIUS, BAD_POINT_ERROR
 */
export function fitCircle(points: readonly Point[], pointError = 0): FittedCircle {
  refuseNotFinite(points);
  if (!Number.isFinite(pointError) || pointError < 0) throw new ScienceError('BAD_POINT_ERROR', said('The error of a point must be 0 or more, not {given}.', { given: String(pointError) }));
  const different = new Set(points.map(({ x, y }) => `${x} ${y}`)).size;
  if (different < 3) throw new ScienceError('CIRCLE_FEW_POINTS', said('A circle needs three different points of its rim; there {different, plural, one {is #} other {are #}}. Set more.', { different }));
  const origin = middle(points);
  const spread = Math.sqrt(points.reduce((sum, p) => sum + distance(p, origin) ** 2, 0) / points.length);
  const unit = points.map((p) => ({ x: (p.x - origin.x) / spread, y: (p.y - origin.y) / spread }));
  refuseStraight(unit);
  const refined = refine(unit, taubinCircle(unit));
  const { centre, radius, sum } = refined;
  const circle: Circle = { centre: { x: origin.x + spread * centre.x, y: origin.y + spread * centre.y }, radius: spread * radius };
  const found = points.length > 3 ? spread * Math.sqrt(sum / (points.length - 3)) : 0;
  const scatter = Math.max(found, pointError);
  return {
    ...circle,
    covariance: inverse(new Matrix(normal(unit, refined).square)).mul(scatter ** 2).to2DArray(),
    residual: spread * Math.sqrt(sum / points.length),
    scatter,
    arc: arcCovered(circle.centre, points),
    n: points.length,
  };
}

function refuseStraight(unit: readonly Point[]): void {
  const sum = (of: (p: Point) => number) => unit.reduce((total, p) => total + of(p), 0);
  const xy = sum(({ x, y }) => x * y);
  const spreads = new EigenvalueDecomposition(new Matrix([[sum(({ x }) => x * x), xy], [xy, sum(({ y }) => y * y)]]), { assumeSymmetric: true });
  if (Math.min(...spreads.realEigenvalues) < STRAIGHT ** 2 * unit.length) throw collinear();
}

function refine(points: readonly Point[], start: Circle): Circle & { sum: number } {
  let circle = start;
  let { square, pull, sum } = normal(points, circle);
  let damping = 1e-3;
  for (let round = 0; round < ROUNDS && damping < 1e12 && circle.radius < 1e3; round++) {
    const damped = square.map((row, i) => row.map((value, k) => (i === k ? value + damping : value)));
    const step = solve(new Matrix(damped), Matrix.columnVector(pull)).to1DArray() as [number, number, number];
    const next = { centre: { x: circle.centre.x - step[0], y: circle.centre.y - step[1] }, radius: circle.radius - step[2] };
    const there = normal(points, next);
    const settled = Math.hypot(...step) < SETTLED * circle.radius;
    if (there.sum <= sum) {
      circle = next;
      ({ square, pull, sum } = there);
      damping = Math.max(damping / 10, 1e-12);
    } else damping *= 10;
    if (settled) break;
  }
  const widest = Math.max(...points.flatMap((p, i) => points.slice(i + 1).map((q) => distance(p, q))));
  if (!(circle.radius <= MOST_RADII * widest)) {
    throw new ScienceError('CIRCLE_RADIUS', said('The points span so little of a rim that the circle would be {times} times as large as they reach. Set points further round the rim.', { times: String(Math.round(circle.radius / widest)) }));
  }
  return { ...circle, sum };
}

interface Normal {
  /** JᵀJ and Jᵀr of the distances from the rim against centre x, centre y and radius. */
  square: number[][];
  pull: number[];
  /** Of squared distances. */
  sum: number;
}

function normal(points: readonly Point[], { centre, radius }: Circle): Normal {
  const square = [[0, 0, 0], [0, 0, 0], [0, 0, 0]];
  const pull = [0, 0, 0];
  let sum = 0;
  for (const p of points) {
    const out = minus(p, centre);
    const length = Math.hypot(out.x, out.y);
    const slope = length === 0 ? [0, 0, -1] : [-out.x / length, -out.y / length, -1];
    const off = length - radius;
    sum += off * off;
    for (let i = 0; i < 3; i++) {
      pull[i]! += slope[i]! * off;
      for (let k = 0; k < 3; k++) square[i]![k]! += slope[i]! * slope[k]!;
    }
  }
  return { square, pull, sum };
}
