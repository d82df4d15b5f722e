import type { Tellable } from '#libs/words/said-error';
import { ScienceError } from '../error.js';
import type { Side } from '../protocols/types.js';
import { checkMarks, type Mark, type MarkedPicture } from './check-marks.js';
import { distractionIndex, type Index } from './distraction-index.js';
import { edgeCoverage, type EdgeCoverage } from './edge-coverage.js';
import { femoralAxis, type FemoralAxis } from './femoral-axis.js';
import { fitCircle, type FittedCircle } from './fit-circle.js';
import type { Measure } from './measure.js';
import { measuredNorbergAngle } from './norberg-angle.js';
import { type Pair, pelvicSymmetry, type Symmetry } from './pelvic-symmetry.js';
import { pictureScale } from './picture-scale.js';
import { middle, minus, type Point } from './plane.js';
import { checkSides, type SideAnswer } from './side-check.js';
import type { MarkKind } from './mark-kinds.js';

type Sided<T> = Partial<Record<Side, T>>;

export interface MarkProblem {
  code: string;
  said: Tellable;
}

/** All that can be told from the marks that are set; what cannot be told yet is absent. */
export interface MarksEvaluation {
  unit: 'mm' | 'px';
  heads: Sided<FittedCircle>;
  sockets: Sided<FittedCircle>;
  index: Sided<Index>;
  norberg: Sided<Measure>;
  coverage: Sided<EdgeCoverage>;
  foramina?: Symmetry;
  wings?: Symmetry;
  femora: Sided<FemoralAxis>;
  sides?: SideAnswer;
  /** What is wrong as it stands; nothing of this picture is kept while there is one. */
  problems: MarkProblem[];
}

const SIDES = ['left', 'right'] as const;

/**
 * Landmarks in, values with units and errors out, all in millimetres where the file says how large its pixels are.
 * Marks that are wrong make a problem in words and leave the rest measured, so that it can run while a point is dragged.
 */
export function evaluateMarks(marked: MarkedPicture): MarksEvaluation {
  const problems: MarkProblem[] = [];
  const result: MarksEvaluation = { unit: 'px', heads: {}, sockets: {}, index: {}, norberg: {}, coverage: {}, femora: {}, problems };
  const attempt = <T>(make: () => T): T | undefined => {
    try {
      return make();
    } catch (error) {
      if (!(error instanceof ScienceError)) throw error;
      problems.push({ code: error.code, said: error.said });
      return undefined;
    }
  };
  const scaling = attempt(() => (checkMarks(marked), pictureScale(marked.picture)));
  if (!scaling) return result;
  const { unit, scale, pointError } = scaling;
  result.unit = unit;
  const points = (kind: MarkKind, side?: Side) => marked.marks.find((m) => m.kind === kind && m.side === side)?.points.map(scale);
  const pair = (kind: MarkKind, side?: Side) => points(kind, side) as Pair | undefined;
  const keep = <T>(into: Sided<T>, side: Side, value: T | undefined) => {
    if (value !== undefined) into[side] = value;
  };
  const circle = (kind: MarkKind, side: Side) => {
    const rim = points(kind, side);
    return rim && attempt(() => fitCircle(rim, pointError));
  };
  for (const side of SIDES) {
    keep(result.heads, side, circle('head', side));
    keep(result.sockets, side, circle('socket', side));
  }
  for (const side of SIDES) {
    const other = side === 'left' ? 'right' : 'left';
    const [head, socket, otherHead] = [result.heads[side], result.sockets[side], result.heads[other]];
    const [rim, edge, femur, midline] = [points('rim', side), pair('dorsalEdge', side), pair('femur', side), pair('midline')];
    if (head && socket) keep(result.index, side, attempt(() => distractionIndex(head, socket)));
    if (head && otherHead && rim) keep(result.norberg, side, attempt(() => measuredNorbergAngle(head, otherHead, rim[0]!, pointError)));
    if (head && otherHead && edge) keep(result.coverage, side, attempt(() => edgeCoverage(head, otherHead.centre, edge)));
    const otherHip = pair('femur', other)?.[0] ?? otherHead?.centre;
    if (femur && midline && otherHip) keep(result.femora, side, attempt(() => femoralAxis(femur, otherHip, midline, pointError)));
  }
  for (const [kind, into] of [['foramen', 'foramina'], ['wing', 'wings']] as const) {
    const [left, right] = [pair(kind, 'left'), pair(kind, 'right')];
    const symmetry = left && right && attempt(() => pelvicSymmetry(left, right, pointError));
    if (symmetry) result[into] = symmetry;
  }
  const sides = judgeSides(marked.marks, scale);
  if (sides) {
    result.sides = sides;
    if (sides.verdict === 'mirrored' || sides.verdict === 'markerOtherSide') problems.push({ code: sides.verdict === 'mirrored' ? 'SIDES_MIRRORED' : 'SIDES_MARKER', said: sides.said });
  }
  return result;
}

function judgeSides(marks: readonly Mark[], scale: (p: Point) => Point): SideAnswer | undefined {
  const of = (side: Side, ...kinds: MarkKind[]) => marks.filter((m) => m.side === side && kinds.includes(m.kind)).flatMap((m) => m.points.map(scale));
  const middles = (side: Side) => ['head', 'socket', 'rim', 'foramen', 'wing', 'femur'].map((kind) => of(side, kind as MarkKind)).filter((p) => p.length > 0).map(middle);
  const [left, right] = [middles('left'), middles('right')];
  if (left.length === 0 || right.length === 0) return undefined;
  const marker = marks.find((m) => m.kind === 'marker');
  const [top, tail] = marks.find((m) => m.kind === 'midline')?.points.map(scale) ?? [];
  return checkSides({
    left: middle(left),
    right: middle(right),
    ...(top && tail ? { towardsHead: minus(top, tail) } : {}),
    ...(marker?.side ? { marker: { side: marker.side, at: scale(marker.points[0]!) } } : {}),
  });
}
