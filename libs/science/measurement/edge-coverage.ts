import { said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import { cross, minus, refuseNotFinite, refuseSame, type Point } from './plane.js';
import type { Circle } from './taubin-circle.js';

export interface EdgeCoverage {
  /** How far the centre lies to the midline's side of the dorsal edge, in radii: above 0 medial to it, below 0 lateral. */
  centreInside: number;
  /** Share of the head's disc to the midline's side of the edge, 0 to 1. */
  share: number;
}

/**
 * Where the head stands against the dorsal edge of its socket, the edge taken as the straight line through two points.
 * Source: the grading criteria of 1991 and 2022 ask whether the centre lies medial to the dorsal edge; the share is plain
 * geometry of a circular segment. No grade follows from either.
 * @param head circle; otherHead centre of the other head, which says where the midline is; edge two points of the dorsal edge
 * @throws ScienceError POINT_NOT_FINITE, POINTS_SAME, EDGE_SIDE when the other head lies on the edge's line
 */
export function edgeCoverage(head: Circle, otherHead: Point, edge: readonly [Point, Point]): EdgeCoverage {
  refuseNotFinite([head.centre, otherHead, ...edge]);
  refuseSame(edge[0], edge[1], said('The two points of the dorsal edge'));
  const along = minus(edge[1], edge[0]);
  const side = Math.sign(cross(along, minus(otherHead, edge[0])));
  if (side === 0) throw new ScienceError('EDGE_SIDE', said('The dorsal edge points straight at the other hip, so it has no side. Move one of its points.'));
  const inside = (side * cross(along, minus(head.centre, edge[0]))) / Math.hypot(along.x, along.y) / head.radius;
  const t = Math.min(1, Math.max(-1, inside));
  return { centreInside: inside, share: 1 - (Math.acos(t) - t * Math.sqrt(1 - t * t)) / Math.PI };
}
