import { DOG_OUTLINE, layLine, type LineDog } from '#libs/contracts/line-of-twenty';
import type { Words } from '#libs/words/words';
import type { Line } from '../letter-blocks.js';
import type { TextStyle } from './rich-text.js';
import { INK, type Sheet } from './sheet.js';

const CAPTION: TextStyle = { size: 8, leading: 1.2, color: INK };
const BOLD: TextStyle = { ...CAPTION, bold: true };
const STROKE = 0.9;
const ABOVE = 5;

const scaled = (line: Line, width: number) => {
  const layout = layLine(line, 20);
  return { layout, scale: width / layout.width };
};

export const lineHeight = (line: Line, width: number): number => {
  const { layout, scale } = scaled(line, width);
  return layout.height * scale + ABOVE + 3;
};

/** Outlines, filled ones and dashed ones: told apart by their shape alone, so that a copy in grey loses nothing. */
export function drawLineOfTwenty(sheet: Sheet, line: Line, place: { x: number; y: number; width: number }, t: Words): void {
  const box = { ...place, y: place.y + ABOVE };
  const { layout, scale } = scaled(line, box.width);
  const { doc } = sheet;
  for (const dog of layout.dogs) drawDog(doc, dog, { x: box.x, y: box.y, scale });
  const at = (x: number, y: number) => ({ x: box.x + x * scale, y: box.y + y * scale });
  const write = (text: string, x: number, y: number, align: 'left' | 'right' | 'center', style = CAPTION) => {
    const width = sheet.widthOf(text, style) + 1;
    const place = at(x, y);
    sheet.write(text, { ...place, x: place.x - (align === 'right' ? width : align === 'center' ? width / 2 : 0), width }, { ...style, align });
  };
  write(line.low, layout.ends.lowX, 0, 'left');
  write(line.high, layout.ends.highX, 0, 'right');
  for (const dog of layout.dogs) if (dog.label) write(dog.label, dog.labelX, dog.labelY - 14, 'center', BOLD);
  if (layout.unsentAt) write(t('X-rayed, not sent'), layout.unsentAt.x, layout.unsentAt.y - 14, 'left');
}

function drawDog(doc: PDFKit.PDFDocument, dog: LineDog, box: { x: number; y: number; scale: number }): void {
  // The outline fills 60 of the 60 units of a step; a little smaller, so that neighbours do not touch.
  const size = box.scale * 0.9;
  doc.save().translate(box.x + dog.x * box.scale, box.y + dog.y * box.scale).scale(size);
  doc.path(DOG_OUTLINE).lineWidth(STROKE / size).lineJoin('round').strokeColor(INK);
  if (dog.kind === 'may') doc.fillAndStroke(INK, INK);
  else if (dog.kind === 'dash') doc.dash(2.2 / size, { space: 1.6 / size }).stroke();
  else doc.stroke();
  doc.undash().restore();
}
