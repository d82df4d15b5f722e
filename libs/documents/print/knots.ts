import { INK, MARK, mm } from './sheet.js';

export const KNOT_SIZE = mm(6);

export type Knot = 'done' | 'hold' | 'open';

/**
 * One visit as a line of knots, to be filled with a pen. A done step is filled and its road thick; a hold breaks the
 * road before it with an end bar and opens its knot, so that it is seen in grey too.
 */
export function drawKnots(doc: PDFKit.PDFDocument, knots: Knot[], at: { x: number; y: number; step: number }): void {
  const radius = KNOT_SIZE / 2;
  knots.forEach((knot, index) => {
    const x = at.x + radius + index * at.step;
    const next = knots[index + 1];
    if (next) drawRoad(doc, { from: x + radius, to: x + at.step - radius, y: at.y }, knot, next);
    if (knot === 'hold') drawOpenLoop(doc, x, at.y, radius);
    else {
      doc.circle(x, at.y, radius - 0.5).lineWidth(1);
      if (knot === 'done') doc.fillAndStroke(INK, INK);
      else doc.strokeColor(INK).stroke();
    }
  });
}

function drawRoad(doc: PDFKit.PDFDocument, road: { from: number; to: number; y: number }, knot: Knot, next: Knot): void {
  const { from, to, y } = road;
  if (next === 'hold') {
    const bar = from + (to - from) * 0.45;
    doc.lineWidth(mm(0.7)).strokeColor(INK).moveTo(from, y).lineTo(bar, y).stroke();
    doc.moveTo(bar, y - mm(1.8)).lineTo(bar, y + mm(1.8)).stroke();
    return;
  }
  const walked = knot === 'done' && next === 'done';
  doc.lineWidth(walked ? mm(0.8) : 0.7).strokeColor(walked ? INK : MARK).moveTo(from, y).lineTo(to, y).stroke();
}

function drawOpenLoop(doc: PDFKit.PDFDocument, x: number, y: number, radius: number): void {
  const r = radius - 0.8;
  const cut = 0.8;
  const [dx, dy] = [r * Math.cos(cut), r * Math.sin(cut)];
  doc.lineWidth(1.9).strokeColor(INK).path(`M${x + dx} ${y - dy}A${r} ${r} 0 1 0 ${x + dx} ${y + dy}`).stroke();
}
