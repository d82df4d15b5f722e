import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { Side } from '../protocols/types.js';
import { cross, minus, type Point } from './plane.js';

export interface SideMarks {
  /** Middle of what is marked on the dog's left and right. */
  left: Point;
  right: Point;
  /** From the dog's tail end to its head end, where marks say so; else the picture is taken to stand with the head up. */
  towardsHead?: Point;
  /** The letter in the picture and where it lies. */
  marker?: { side: Side; at: Point };
}

export type SideAnswer = { verdict: 'agree' | 'noMarker' | 'mirrored' | 'markerOtherSide'; said: Tellable };

const UP: Point = { x: 0, y: -1 };

/**
 * Whether left and right can be as they are marked on a view from below: with the head up, the dog's left lies on the
 * right of the picture, and a side marker lies on the side it names.
 * Source: ventrodorsal views are shown as if facing the dog; common practice, no source.
 */
export function checkSides({ left, right, towardsHead = UP, marker }: SideMarks): SideAnswer {
  const turn = cross(towardsHead, minus(left, right));
  if (turn < 0) {
    return { verdict: 'mirrored', said: said('The dog’s left is marked where its right lies on a view from below. Either the sides were exchanged, or the picture is mirrored or was taken from above. Look at the side marker and mark again.') };
  }
  if (!marker) return { verdict: 'noMarker', said: said('No side marker is set, so the sides rest on how the picture stands.') };
  const onLeft = cross(towardsHead, minus(marker.at, { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 })) > 0;
  if (onLeft === (marker.side === 'left')) return { verdict: 'agree', said: onLeft ? said('Side marker L lies on the dog’s left.') : said('Side marker R lies on the dog’s right.') };
  return { verdict: 'markerOtherSide', said: onLeft ? said('Side marker R lies on the side that is marked left. Either the sides were exchanged, or the picture is mirrored. Nothing can be said of it until the sides are known.') : said('Side marker L lies on the side that is marked right. Either the sides were exchanged, or the picture is mirrored. Nothing can be said of it until the sides are known.') };
}
