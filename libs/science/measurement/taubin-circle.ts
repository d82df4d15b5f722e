import { Matrix, SingularValueDecomposition } from 'ml-matrix';
import { said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import type { Point } from './plane.js';

export interface Circle {
  centre: Point;
  radius: number;
}

/**
 * The algebraic circle whose gradient has unit mean square: hardly biased on short arcs, and a safe start for the geometric fit.
 * Source: Taubin, IEEE PAMI 1991;13:1115-1138, solved by singular values.
 * @param points n ≥ 3 with their mean at (0, 0), any unit
 * @throws ScienceError CIRCLE_COLLINEAR
 */
export function taubinCircle(points: readonly Point[]): Circle {
  const squares = points.map(({ x, y }) => x * x + y * y);
  const mean = squares.reduce((sum, z) => sum + z, 0) / points.length;
  const root = 2 * Math.sqrt(mean);
  const rows = points.map(({ x, y }, i) => [(squares[i]! - mean) / root, x, y]);
  const v = new SingularValueDecomposition(new Matrix(rows)).rightSingularVectors;
  const [a, b, c] = [v.get(0, 2) / root, v.get(1, 2), v.get(2, 2)];
  if (a === 0) throw collinear();
  return {
    centre: { x: -b / (2 * a), y: -c / (2 * a) },
    radius: Math.sqrt(b * b + c * c + 4 * mean * a * a) / (2 * Math.abs(a)),
  };
}

export const collinear = () => new ScienceError('CIRCLE_COLLINEAR', said('The points lie on one straight line, so no circle goes through them. Move one along the rim.'));
