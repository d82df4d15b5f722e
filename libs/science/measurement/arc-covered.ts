import type { Point } from './plane.js';

/**
 * How much of a circle's rim the points span: 360 degrees less the widest gap between neighbours.
 * A short arc says little of the far side of a circle.
 * @returns degrees, 0 to below 360; three points evenly spread give 240
 */
export function arcCovered(centre: Point, points: readonly Point[]): number {
  const angles = points.map((p) => Math.atan2(p.y - centre.y, p.x - centre.x)).sort((a, b) => a - b);
  const gaps = angles.map((angle, i) => (i + 1 < angles.length ? angles[i + 1]! : angles[0]! + 2 * Math.PI) - angle);
  return 360 - (Math.max(...gaps) * 180) / Math.PI;
}
