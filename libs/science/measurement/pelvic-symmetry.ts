import { said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import type { Side } from '../protocols/types.js';
import { errorOf, pointCovariance } from './error-of.js';
import { measure, type Measure } from './measure.js';
import { distance, refuseNotFinite, type Point } from './plane.js';

export type Pair = readonly [Point, Point];

export interface Symmetry {
  left: number;
  right: number;
  /** How much narrower the narrower side is: 0 alike, towards 1 the more they differ. */
  apart: Measure;
  wider: Side | null;
  /** Beyond our own limit: it warns and stops nobody. */
  beyond: boolean;
}

/**
 * Differences above which a pelvis is said to lie turned: our own engineering choice. Turning by more than 2 degrees is
 * seen by readers (Klever et al. Vet Comp Orthop Traumatol 2023) and goes with unequal wings and openings (Martins et al.
 * Vet Comp Orthop Traumatol 2016;29:68-74), but no published figure for dogs says how unequal is too much.
 */
export const SYMMETRY_LIMIT = 0.1;

/**
 * How alike the two sides of the pelvis look, from the widths of the obturator foramina or of the iliac wings.
 * @param left, right the two ends of each width; pointError standard deviation of one placed point, same unit
 * @returns widths in that unit, `apart` without one; invariant under shift, turn, mirror and scale
 * @throws ScienceError POINT_NOT_FINITE, WIDTH_ZERO
 */
export function pelvicSymmetry(left: Pair, right: Pair, pointError: number): Symmetry {
  refuseNotFinite([...left, ...right]);
  const widths = { left: distance(...left), right: distance(...right) };
  for (const side of ['left', 'right'] as const) {
    if (widths[side] === 0) throw new ScienceError('WIDTH_ZERO', said('The two ends of the {side, select, left {left} other {right}} width lie on one another. Move one.', { side }));
  }
  const x = [...left, ...right].map((p) => [p.x, p.y]);
  const apartOf = (g: number[][]) => {
    const [l, r] = [Math.hypot(g[0]![0]! - g[1]![0]!, g[0]![1]! - g[1]![1]!), Math.hypot(g[2]![0]! - g[3]![0]!, g[2]![1]! - g[3]![1]!)];
    return widths.left >= widths.right ? 1 - r / l : 1 - l / r;
  };
  const error = errorOf(apartOf, x, x.map(() => pointCovariance(pointError)));
  const value = apartOf(x);
  const wider = widths.left === widths.right ? null : widths.left > widths.right ? 'left' : 'right';
  return { ...widths, apart: { ...measure(value, error), from: Math.max(0, measure(value, error).from) }, wider, beyond: value > SYMMETRY_LIMIT };
}
