import { said } from '#libs/words/said';
import { errorOf, pointCovariance } from './error-of.js';
import { measure, type Measure } from './measure.js';
import { cross, dot, minus, refuseNotFinite, refuseSame, type Point } from './plane.js';

/** Above this a thigh is said to lie off line: our own choice; accepted views had −4.85 to 5.85 degrees (Front Vet Sci 2023;10:1160200). */
export const FEMUR_LIMIT = 5;

export interface FemoralAxis extends Measure {
  beyond: boolean;
}

/**
 * Angle of a thigh bone against the midline of the pelvis on the extended view.
 * @param femur hip end and knee end of the bone's axis
 * @param midline head end and tail end of the pelvis's midline; its side of the dog is told by `otherFemur`'s hip end
 * @returns degrees, −180 to 180: above 0 the knee points away from the other leg, below 0 towards it
 * @throws ScienceError POINT_NOT_FINITE, POINTS_SAME
 */
export function femoralAxis(femur: readonly [Point, Point], otherHip: Point, midline: readonly [Point, Point], pointError: number): FemoralAxis {
  refuseNotFinite([...femur, otherHip, ...midline]);
  refuseSame(femur[0], femur[1], said('The two ends of the thigh bone'));
  refuseSame(midline[0], midline[1], said('The two ends of the midline'));
  const outward = Math.sign(cross(minus(midline[1], midline[0]), minus(femur[0], otherHip))) || 1;
  const angle = (g: number[][]) => {
    const [hip, knee, top, tail] = g.map(([x, y]) => ({ x: x!, y: y! })) as [Point, Point, Point, Point];
    const [axis, bone] = [minus(tail, top), minus(knee, hip)];
    return (outward * Math.atan2(cross(axis, bone), dot(axis, bone)) * 180) / Math.PI;
  };
  const x = [...femur, ...midline].map((p) => [p.x, p.y]);
  const measured = measure(angle(x), errorOf(angle, x, x.map(() => pointCovariance(pointError))));
  return { ...measured, beyond: Math.abs(measured.value) > FEMUR_LIMIT };
}
