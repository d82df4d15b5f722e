import { inPlainEnglish } from '#libs/words/said-error';
import fc from 'fast-check';
import type { Mark, MarkedPicture } from './check-marks.js';
import { evaluateMarks } from './evaluate-marks.js';
import { refuseMarks } from './refuse-marks.js';
import type { Point } from './plane.js';

const WIDTH = 1000;
const around = (x: number, y: number, r: number, n = 6): Point[] => Array.from({ length: n }, (_, i) => (2 * Math.PI * i) / n + 0.3).map((a) => ({ x: x + r * Math.cos(a), y: y + r * Math.sin(a) }));
/** The dog's left on the right of the picture, the head up. */
const sides = (kind: Mark['kind'], of: (sign: 1 | -1) => Point[]): Mark[] => [{ kind, side: 'left', points: of(1) }, { kind, side: 'right', points: of(-1) }];

const hips: MarkedPicture = {
  view: 'vdExtended',
  picture: { width: WIDTH, height: 1300 },
  marks: [
    ...sides('head', (s) => around(500 + s * 150, 420, 46)),
    ...sides('rim', (s) => [{ x: 500 + s * 162, y: 372 }]),
    ...sides('dorsalEdge', (s) => [{ x: 500 + s * 166, y: 376 }, { x: 500 + s * 154, y: 460 }]),
    ...sides('foramen', (s) => [{ x: 500 + s * 36, y: 540 }, { x: 500 + s * (s > 0 ? 100 : 90), y: 540 }]),
    ...sides('wing', (s) => [{ x: 500 + s * 46, y: 150 }, { x: 500 + s * 180, y: 150 }]),
    ...sides('femur', (s) => [{ x: 500 + s * 190, y: 520 }, { x: 500 + s * (s > 0 ? 200 : 190), y: 1000 }]),
    { kind: 'midline', points: [{ x: 500, y: 120 }, { x: 500, y: 640 }] },
    { kind: 'marker', side: 'left', points: [{ x: 940, y: 180 }] },
  ],
};
const stressed: MarkedPicture = {
  view: 'vdDistraction',
  picture: { width: WIDTH, height: 1000 },
  marks: [...sides('head', (s) => around(500 + s * 190, 428, 50)), ...sides('socket', (s) => around(500 + s * 168, 420, 55))],
};
const moved = (marked: MarkedPicture, move: (p: Point) => Point, picture = marked.picture): MarkedPicture => ({ ...marked, picture, marks: marked.marks.map((m) => ({ ...m, points: m.points.map(move) })) });
const swapped = (marked: MarkedPicture): MarkedPicture => ({ ...marked, marks: marked.marks.map((m) => (m.side && m.kind !== 'marker' ? { ...m, side: m.side === 'left' ? 'right' : 'left' } : m)) });
const codes = (marked: MarkedPicture) => evaluateMarks(marked).problems.map((p) => p.code);

describe('evaluateMarks', () => {
  it('measures an extended view: angles, openings, wings, thighs, sides', () => {
    const found = evaluateMarks(hips);
    expect(found.problems).toEqual([]);
    expect(found.norberg.left!.value).toBeCloseTo(90 + (Math.atan2(12, 48) * 180) / Math.PI, 6);
    expect(found.norberg.left!.standardError).toBeGreaterThan(1);
    expect(found.foramina).toMatchObject({ left: 64, right: 54, wider: 'left', beyond: true });
    expect(found.foramina!.apart.value).toBeCloseTo(10 / 64, 10);
    expect(found.wings).toMatchObject({ wider: null, beyond: false });
    expect(found.femora.left!.value).toBeCloseTo((Math.atan2(10, 480) * 180) / Math.PI, 6);
    expect(found.femora.right!.value).toBeCloseTo(0, 6);
    expect(found.coverage.left!.centreInside).toBeGreaterThan(0);
    expect(found.coverage.left!.share).toBeCloseTo(found.coverage.right!.share, 6);
    expect(found.sides?.verdict).toBe('agree');
  });

  it('measures an index in millimetres where pixels are not square, and gets another one than in pixels', () => {
    const inPixels = evaluateMarks(stressed).index.left!;
    const inMm = evaluateMarks({ ...stressed, picture: { ...stressed.picture, spacing: { row: 0.2, column: 0.1 } } });
    expect(inPixels.value).toBeCloseTo(Math.hypot(22, 8) / 50, 6);
    expect(inMm.unit).toBe('mm');
    // Round in pixels is not round in millimetres, so the points of a true circle are taken.
    const round = moved(stressed, ({ x, y }) => ({ x, y: y / 2 }));
    const flat = evaluateMarks({ ...round, picture: { ...stressed.picture, spacing: { row: 0.2, column: 0.1 } } }).index.left!;
    expect(flat.value).toBeCloseTo(inPixels.value, 6);
    expect(evaluateMarks(round).index.left!.value).not.toBeCloseTo(inPixels.value, 2);
  });

  it('gives the same values however the picture is shifted, turned, grown or mirrored', () => {
    const plain = evaluateMarks(stressed);
    const around0 = evaluateMarks(hips);
    fc.assert(fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), fc.double({ min: 0.2, max: 20, noNaN: true }), fc.boolean(), (angle, k, mirror) => {
      const move = ({ x, y }: Point): Point => {
        const [u, v] = [mirror ? 500 - x : x - 500, y - 600];
        return { x: 3000 * k + k * (u * Math.cos(angle) - v * Math.sin(angle)), y: 3000 * k + k * (u * Math.sin(angle) + v * Math.cos(angle)) };
      };
      const picture = { width: Math.ceil(6000 * k), height: Math.ceil(6000 * k) };
      const [a, b] = [evaluateMarks(moved(stressed, move, picture)), evaluateMarks(moved(hips, move, picture))];
      for (const side of ['left', 'right'] as const) {
        expect(a.index[side]!.value).toBeCloseTo(plain.index[side]!.value, 8);
        expect(b.norberg[side]!.value).toBeCloseTo(around0.norberg[side]!.value, 6);
        expect(b.femora[side]!.value).toBeCloseTo(around0.femora[side]!.value, 6);
        expect(b.coverage[side]!.share).toBeCloseTo(around0.coverage[side]!.share, 8);
      }
      expect(b.foramina!.apart.value).toBeCloseTo(around0.foramina!.apart.value, 8);
      expect(b.sides!.verdict).toBe(mirror ? 'mirrored' : 'agree');
    }), { numRuns: 40 });
  });

  it('exchanges left and right with the marks', () => {
    expect(evaluateMarks(swapped(stressed)).index.left!.value).toBeCloseTo(evaluateMarks(stressed).index.right!.value, 10);
  });

  it('refuses sides that cannot be: exchanged marks, a mirrored picture, a marker on the other side', () => {
    expect(codes(swapped(hips))).toEqual(['SIDES_MIRRORED']);
    expect(codes(moved(hips, ({ x, y }) => ({ x: WIDTH - x, y })))).toEqual(['SIDES_MIRRORED']);
    expect(codes({ ...hips, marks: hips.marks.map((m) => (m.kind === 'marker' ? { ...m, side: 'right' } : m)) })).toEqual(['SIDES_MARKER']);
    expect(evaluateMarks(stressed).sides).toMatchObject({ verdict: 'noMarker' });
  });

  const only = (...marks: Mark[]): MarkedPicture => ({ ...hips, marks });
  it.each<[string, MarkedPicture, string, RegExp]>([
    ['nothing marked', only(), 'MARK_NONE', /Nothing is marked/],
    ['a point outside the picture', only({ kind: 'rim', side: 'left', points: [{ x: 1001, y: 3 }] }), 'POINT_OUTSIDE', /Outer rim, left: point 1 at 1001, 3 lies outside the picture of 1000 × 1300/],
    ['a point that is no number', only({ kind: 'rim', side: 'left', points: [{ x: NaN, y: 3 }] }), 'POINT_NOT_FINITE', /Point 1 has no place/],
    ['two points for a circle', only({ kind: 'head', side: 'left', points: around(300, 300, 40, 2) }), 'MARK_POINTS', /Head, left: needs 3 to 24 points and has 2/],
    ['points on a line', only({ kind: 'head', side: 'left', points: [1, 2, 3].map((x) => ({ x, y: x })) }), 'CIRCLE_COLLINEAR', /straight line/],
    ['one mark twice', only(hips.marks[0]!, hips.marks[0]!), 'MARK_TWICE', /twice/],
    ['two side markers', only({ kind: 'marker', side: 'left', points: [{ x: 1, y: 1 }] }, { kind: 'marker', side: 'right', points: [{ x: 1, y: 1 }] }), 'MARK_TWICE', /Side marker is marked twice/],
    ['a mark of another view', only({ kind: 'socket', side: 'left', points: around(300, 300, 40) }), 'MARK_UNKNOWN', /not marked on this view/],
    ['a side left out', only({ kind: 'head', points: around(300, 300, 40) }), 'MARK_SIDE', /left or right/],
    ['a side too many', only({ kind: 'midline', side: 'left', points: around(300, 300, 40, 2) }), 'MARK_SIDE', /has no side/],
    ['pixels of no size', { ...hips, picture: { ...hips.picture, spacing: { row: 0, column: 0.1 } } }, 'SPACING_BAD', /0.1 × 0 mm/],
    ['pixels of a size below 0', { ...hips, picture: { ...hips.picture, spacing: { row: 0.1, column: -0.1 } } }, 'SPACING_BAD', /-0.1 × 0.1 mm/],
    ['a picture without size', { ...hips, picture: { width: 0, height: 100 } }, 'PICTURE_SIZE', /0 × 100/],
    ['an opening without width', only({ kind: 'foramen', side: 'left', points: [{ x: 5, y: 5 }, { x: 5, y: 5 }] }, { kind: 'foramen', side: 'right', points: [{ x: 1, y: 5 }, { x: 2, y: 5 }] }), 'WIDTH_ZERO', /left width/],
    ['two circles that belong to different hips', { ...stressed, marks: [{ kind: 'head', side: 'left', points: around(650, 420, 50) }, { kind: 'socket', side: 'left', points: around(350, 420, 55) }] }, 'INDEX_IMPOSSIBLE', /both circles belong to the same side/],
  ])('says what is wrong with %s', (_, marked, code, words) => {
    const [first] = evaluateMarks(marked).problems;
    expect([first!.code, inPlainEnglish(first!.said)]).toEqual([code, expect.stringMatching(words)]);
    expect(() => refuseMarks(marked)).toThrow(expect.objectContaining({ code }));
  });

  it('answers any numbers with values or words and never with anything else', () => {
    const number = fc.oneof(fc.double(), fc.integer({ min: -5, max: 1100 }));
    const mark = fc.record({ kind: fc.constantFrom('head', 'rim', 'dorsalEdge', 'foramen', 'wing', 'femur', 'midline', 'marker'), side: fc.constantFrom('left', 'right', undefined), points: fc.array(fc.record({ x: number, y: number }), { maxLength: 5 }) });
    fc.assert(fc.property(fc.array(mark, { maxLength: 8 }), (marks) => {
      const found = evaluateMarks({ ...hips, marks: marks as Mark[] });
      for (const { code, said } of found.problems) expect([code, inPlainEnglish(said).length > 20]).toEqual([expect.stringMatching(/^[A-Z_]+$/), true]);
    }));
  });
});
