import { said, type Said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import type { Side } from '../protocols/types.js';
import { kindsOfMarks, type KindOfMark, type MarkKind } from './mark-kinds.js';
import { pictureScale, refuseOutside, type Picture } from './picture-scale.js';
import type { Point } from './plane.js';

export interface Mark {
  kind: MarkKind;
  /** Of the dog; absent for what lies on the midline. A side marker carries the side it names. */
  side?: Side;
  points: Point[];
}

export interface MarkedPicture {
  view: string;
  picture: Picture;
  marks: Mark[];
}

/** "Head, left": a mark for people. */
function markName({ label }: KindOfMark, side?: Side): Said {
  return side ? said('{mark}, {side, select, left {left} other {right}}', { mark: said(label), side }) : said(label);
}

/**
 * Whether marks can be kept: known for the view, each once, each with as many points as it needs, inside the picture.
 * @throws ScienceError MARK_NONE, MARK_UNKNOWN, MARK_SIDE, MARK_TWICE, MARK_POINTS and those of pictureScale and refuseOutside
 */
export function checkMarks({ view, picture, marks }: MarkedPicture): void {
  pictureScale(picture);
  if (marks.length === 0) throw new ScienceError('MARK_NONE', said('Nothing is marked yet. Set points on the picture first.'));
  const kinds = kindsOfMarks(view);
  const seen = new Set<string>();
  for (const { kind, side, points } of marks) {
    const rule = kinds.find((k) => k.kind === kind);
    if (!rule) throw new ScienceError('MARK_UNKNOWN', kinds.length ? said('“{kind}” is not marked on this view. Use {kinds}.', { kind, kinds: kinds.map((k) => k.kind).join(', ') }) : said('“{kind}” is not marked on this view. Nothing is measured on it.', { kind }));
    const mark = said(rule.label);
    if (rule.sided !== (side !== undefined)) throw new ScienceError('MARK_SIDE', rule.sided ? said('{mark}: say whether it is the dog’s left or right.', { mark }) : said('{mark} has no side. Leave the side out.', { mark }));
    const name = markName(rule, side);
    const once = kind === 'marker' ? kind : `${kind} ${side}`;
    if (seen.has(once)) throw new ScienceError('MARK_TWICE', said('{mark} is marked twice. Keep one.', { mark }));
    seen.add(once);
    if (points.length < rule.atLeast || points.length > rule.atMost) {
      const wanted = rule.atLeast === rule.atMost ? String(rule.atLeast) : said('{from} to {to}', { from: rule.atLeast, to: rule.atMost });
      throw new ScienceError('MARK_POINTS', said('{mark}: needs {wanted} points and has {has}. Set or remove some.', { mark: name, wanted, has: points.length }));
    }
    refuseOutside(points, picture, name);
  }
}
