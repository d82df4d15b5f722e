import { said } from '#libs/words/said';
import type { Circle } from './taubin-circle.js';
import { errorOf, pointCovariance } from './error-of.js';
import { measure, type Measure } from './measure.js';
import { angleBetween, minus, refuseNotFinite, refuseSame, type Point } from './plane.js';

/**
 * Norberg angle: at the centre of a femoral head, between the line to the centre of the other head and the line to the
 * craniolateral rim of the socket on the same side. No grade follows from it.
 * Source: angle as in Vet Comp Orthop Traumatol 2020, introduction; by atan2 and never clamped.
 * @param head, otherHead centres; rim the craniolateral edge; all in one unit that is the same in both directions
 * @returns degrees, 0 to 180; 90 where the rim stands straight above the centre, more where it reaches further out
 * @throws ScienceError POINT_NOT_FINITE, POINTS_SAME
 */
export function norbergAngle(head: Point, otherHead: Point, rim: Point): number {
  refuseNotFinite([head, otherHead, rim]);
  refuseSame(head, otherHead, said('The centres of the two heads'));
  refuseSame(head, rim, said('The centre of a head and the rim of its socket'));
  return (angleBetween(minus(otherHead, head), minus(rim, head)) * 180) / Math.PI;
}

type Head = Pick<Circle, 'centre'> & { covariance: number[][] };

/** The angle with the errors of both centres and of the placed rim point (its standard deviation, same unit). */
export function measuredNorbergAngle(head: Head, otherHead: Head, rim: Point, pointError: number): Measure {
  const value = norbergAngle(head.centre, otherHead.centre, rim);
  const x = [head.centre, otherHead.centre, rim].map((p) => [p.x, p.y]);
  const angle = (groups: number[][]) => norbergAngle(...(groups.map(([px, py]) => ({ x: px!, y: py! })) as [Point, Point, Point]));
  return measure(value, errorOf(angle, x, [head.covariance, otherHead.covariance, pointCovariance(pointError)]));
}
