import { INK, MARK } from './sheet.js';

type Curve = readonly [number, number, number, number, number, number];

/** The right half of a dog seen from above, from the nose at the origin to the tip of the tail; the left half mirrors it. */
const HALF: readonly Curve[] = [
  [5, 0, 8.5, 2.5, 9, 8.5],
  [9.4, 15, 10.5, 22, 14, 29],
  [17.5, 35, 18.5, 44, 16.5, 53],
  [15, 59, 14.8, 64, 16.5, 70],
  [20, 80, 31, 85, 35, 100],
  [37.5, 112, 36.5, 126, 36, 140],
  [35.5, 160, 32, 178, 27, 195],
  [25, 203, 26, 212, 29.5, 222],
  [35, 238, 32, 257, 20, 265],
  [14, 268.6, 8, 270, 4.6, 271],
  [4.6, 290, 3.8, 308, 2.4, 324],
  [1.9, 329, 0.6, 331, 0, 331],
];
const START = [0, 0] as const;

const EAR = 'M14.5 31C23 31 31 42 31.5 55C31.8 63.5 25.5 66 20.5 60C17.5 56 16.6 50 16.8 45';
const SHOULDER_BLADE = 'M9 97C17 95 25 101 28 112';
const HAUNCH = 'M10 221C18 219 24 225 26 236';

export const DOG_LENGTH = 331;

/** Where the joints lie, on the right side; the left mirrors them. */
export const JOINT_PLACES = { elbow: { x: 28.5, y: 124 }, hip: { x: 18.5, y: 234 } } as const;

function outline(): string {
  const right = HALF.map((curve) => `C${curve.join(' ')}`).join('');
  const ends = [START, ...HALF.map((curve) => [curve[4], curve[5]] as const)];
  const left = HALF.map(([ax, ay, bx, by], at) => {
    const [x, y] = ends[at] ?? START;
    return `C${-bx} ${by} ${-ax} ${ay} ${-x} ${y}`;
  }).reverse();
  return `M0 0${right}${left.join('')}Z`;
}

/** Draws the dog with its nose at `at`, head up the page, so that its left is the reader's left. */
export function drawDogFromAbove(doc: PDFKit.PDFDocument, at: { x: number; y: number; scale: number }): void {
  doc.save().translate(at.x, at.y).scale(at.scale);
  const line = 1.1 / at.scale;
  doc.lineJoin('round').lineCap('round').lineWidth(line).strokeColor(INK);
  doc.path(outline()).stroke();
  for (const side of [1, -1]) {
    doc.save().scale(side, 1);
    doc.path(EAR).fillAndStroke('white', INK);
    doc.lineWidth(line * 0.6).strokeColor(MARK).path(SHOULDER_BLADE).stroke().path(HAUNCH).stroke();
    doc.restore();
  }
  doc.lineWidth(line * 0.6).strokeColor(MARK).moveTo(0, 74).lineTo(0, 262).stroke();
  doc.restore();
}
