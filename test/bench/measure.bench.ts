import { Matrix, solve } from 'ml-matrix';
import { evaluateMarks } from '#libs/science/measurement/evaluate-marks';
import type { Mark, MarkedPicture } from '#libs/science/measurement/check-marks';
import { fitCircle } from '#libs/science/measurement/fit-circle';
import type { Point } from '#libs/science/measurement/plane';
import type { BenchContext } from '../support/bench.js';
import { inTurns } from './support/load.js';

const POINT_ERROR = 1.5;
/** A rim of which 200 degrees can be followed, with a hand that is off by a pixel here and there. */
const rim = (x: number, y: number, r: number, n = 12): Point[] =>
  Array.from({ length: n }, (_, i) => ((80 + (200 * i) / (n - 1)) * Math.PI) / 180).map((a, i) => ({ x: x + (r + Math.sin(7 * i)) * Math.cos(a), y: y + (r + Math.sin(7 * i)) * Math.sin(a) }));

/** Every mark that the extended view takes, twelve points a circle. */
const sides = (kind: Mark['kind'], of: (sign: 1 | -1) => Point[]): Mark[] => [{ kind, side: 'left', points: of(1) }, { kind, side: 'right', points: of(-1) }];
const pair = (x1: number, y1: number, x2: number, y2: number) => (s: 1 | -1) => [{ x: 500 + s * x1, y: y1 }, { x: 500 + s * x2, y: y2 }];
const extended: MarkedPicture = {
  view: 'vdExtended', picture: { width: 1000, height: 1300 },
  marks: [
    ...sides('head', (s) => rim(500 + s * 150, 420, 46)), ...sides('rim', (s) => [{ x: 500 + s * 162, y: 372 }]), ...sides('dorsalEdge', pair(166, 376, 154, 460)),
    ...sides('foramen', pair(36, 540, 100, 540)), ...sides('wing', pair(46, 150, 180, 150)), ...sides('femur', pair(190, 520, 200, 1000)),
    { kind: 'midline', points: [{ x: 500, y: 120 }, { x: 500, y: 640 }] }, { kind: 'marker', side: 'left', points: [{ x: 940, y: 180 }] },
  ],
};
const stressed: MarkedPicture = { view: 'vdDistraction', picture: { width: 1000, height: 1000 }, marks: [...sides('head', (s) => rim(500 + s * 190, 428, 50)), ...sides('socket', (s) => rim(500 + s * 168, 420, 55))] };

/** The plainest circle that the same numerics library can make: one linear system, no error, no refusal. */
function bareCircle(points: Point[]): number[] {
  return solve(new Matrix(points.map(({ x, y }) => [x, y, 1])), Matrix.columnVector(points.map(({ x, y }) => x * x + y * y))).to1DArray();
}

const FITS = 200;
const many = <T>(times: number, work: () => T) => async (): Promise<void> => {
  for (let i = 0; i < times; i++) work();
};

export async function run({ row }: BenchContext): Promise<void> {
  const points = rim(700, 500, 58);
  const fit = await inTurns(many(FITS, () => fitCircle(points, POINT_ERROR)), many(FITS, () => bareCircle(points)));
  row('one circle with its error ÷ a bare linear fit with ml-matrix', fit.ours * FITS, 'fits/s', fit.ours / fit.bare);
  const full = await inTurns(many(FITS / 10, () => (evaluateMarks(extended), evaluateMarks(stressed))), many(FITS / 10, () => bareCircle(points)));
  const perSecond = full.ours * (FITS / 10) * 2;
  row('all marks of a film evaluated', perSecond, 'films/s');
  row('all marks of a film evaluated, of the 16 ms of a frame', 1000 / perSecond, 'ms');
}
