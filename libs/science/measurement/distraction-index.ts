import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { figure, said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import type { FittedCircle } from './fit-circle.js';
import { measure, type Measure } from './measure.js';
import { minus } from './plane.js';

export interface Index extends Measure {
  /** Distance of the two centres, in the circles' unit. */
  distance: number;
  /** Whether the value lies so near 0 that a distance, which cannot be negative, comes out too large on average. */
  nearZero: boolean;
  /** What readings of a hip whose centres truly coincide would show with this error. */
  ofNoDistance: { mean: number; standardDeviation: number; below95: number };
}

type Fit = Pick<FittedCircle, 'centre' | 'radius' | 'covariance'>;

/** Above, the head would lie wholly outside the place it had: our own choice, no source. */
const MOST = 2;
/** From here up the straight-line error and the exact one agree to a few per cent; from 0.1 at an error of 0.0236. */
const NEAR = 4.24;
/** Radius of the disc that holds 95 of 100 two-way normal errors of unit size: √(−2·ln 0.05). */
const DISC95 = Math.sqrt(-2 * Math.log(0.05));

/**
 * Distraction index: how far the centre of the femoral head lies from the centre of its socket, in radii of the head.
 * Away from 0 the error is to first order and the interval ±1.96 of it. Near 0 the interval is that of the shift as a
 * vector: it is never short, starts at 0 when 0 cannot be told from the value, and the value itself is not corrected.
 * Source: index as in Vet Comp Orthop Traumatol 2020, introduction; error near 0 after Rice's distribution of a distance.
 * @param head, socket circles in one unit that is the same in both directions: pixels only when pixels are square
 * @returns unitless, 0 to 2; invariant under shift, turn, mirror and scale
 * @throws ScienceError INDEX_RADIUS, INDEX_IMPOSSIBLE, INDEX_NOT_FINITE
 */
export function distractionIndex(head: Fit, socket: Fit): Index {
  if (![head.centre.x, head.centre.y, head.radius, socket.centre.x, socket.centre.y, socket.radius].every(Number.isFinite)) {
    throw new ScienceError('INDEX_NOT_FINITE', said('A centre or a radius is no number, so there is no index. Set the points again.'));
  }
  if (head.radius <= 0 || socket.radius <= 0) throw new ScienceError('INDEX_RADIUS', said('A circle has a radius of 0 or less, so there is no index. Set its points again.'));
  const shift = minus(head.centre, socket.centre);
  const d = Math.hypot(shift.x, shift.y);
  const value = d / head.radius;
  if (value > MOST) throw new ScienceError('INDEX_IMPOSSIBLE', said('The centres lie {apart} radii apart; above {most} the head would be wholly outside its place. Check that both circles belong to the same side.', { apart: figure(value, 2), most: figure(MOST, 2) }));
  const r = head.radius;
  const [a, b] = [0, 1].map((i) => [0, 1].map((j) => (head.covariance[i]![j]! + socket.covariance[i]![j]!) / r ** 2)) as [number[], number[]];
  const spread = Math.sqrt(Math.max(0, ...new EigenvalueDecomposition(new Matrix([a, b]), { assumeSymmetric: true }).realEigenvalues));
  const ofNoDistance = { mean: spread * Math.sqrt(Math.PI / 2), standardDeviation: spread * Math.sqrt(2 - Math.PI / 2), below95: spread * DISC95 };
  const nearZero = value < NEAR * spread;
  const standardError = nearZero ? spread : straightError(shift, d, head, socket);
  const { from, to } = measure(value, standardError);
  if (!nearZero) return { value, standardError, from, to, distance: d, nearZero, ofNoDistance };
  return { value, standardError, from: Math.max(0, value - DISC95 * spread), to: value + DISC95 * spread, distance: d, nearZero, ofNoDistance };
}

function straightError(shift: { x: number; y: number }, d: number, head: Fit, socket: Fit): number {
  const r = head.radius;
  const along = [shift.x / d / r, shift.y / d / r];
  const ofHead = [...along, -d / r ** 2];
  const form = (slope: number[], covariance: number[][]) => slope.reduce((sum, p, i) => sum + slope.reduce((row, q, j) => row + p * q * covariance[i]![j]!, 0), 0);
  return Math.sqrt(form(ofHead, head.covariance) + form(along, socket.covariance));
}

