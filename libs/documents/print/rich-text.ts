import { byFont, isHebrew, type FontName } from './fonts.js';

/** Text in which **two stars** make bold. Lines break at spaces only, so a no-break space holds a value to its unit. */
export type RichText = string;

export interface TextStyle {
  size: number;
  /** Line height as a multiple of the size. */
  leading: number;
  color: string;
  bold?: boolean;
  align?: 'left' | 'right' | 'center';
}

interface Run {
  text: string;
  font: FontName;
}

export interface Line {
  runs: Run[];
  width: number;
}

type Pen = PDFKit.PDFDocument;

export function plain(text: RichText): string {
  return text.replaceAll('**', '');
}

function wordsOf(text: RichText, bold: boolean): Run[][] {
  const words: Run[][] = [[]];
  text.split('**').forEach((part, index) => {
    const partBold = bold || index % 2 === 1;
    part.split(/[ \n\t]/).forEach((piece, at) => {
      if (at > 0) words.push([]);
      words.at(-1)?.push(...byFont(piece, partBold));
    });
  });
  return words.filter((word) => word.length > 0);
}

/** Neighbours of one font become one run; a space goes to the Latin side, where it cannot end up on the wrong end. */
function join(words: Run[][]): Run[] {
  const runs: Run[] = [];
  words.forEach((word, at) => {
    word.forEach((piece, index) => {
      const last = runs.at(-1);
      const space = at > 0 && index === 0 ? ' ' : '';
      if (last?.font === piece.font) last.text += space + piece.text;
      else if (last && isHebrew(piece.font)) {
        last.text += space;
        runs.push({ ...piece });
      } else runs.push({ font: piece.font, text: space + piece.text });
    });
  });
  return runs;
}

// Named features make pdfkit shape a run as a whole: word by word, several Hebrew words would stand in the wrong order.
const shaping = (font: FontName) => (isHebrew(font) ? { features: ['kern' as const] } : {});

function widthOf(doc: Pen, runs: Run[], size: number): number {
  return runs.reduce((sum, { text, font }) => sum + doc.font(font).fontSize(size).widthOfString(text, shaping(font)), 0);
}

/** A single word longer than the line is cut, after a hyphen where it has one, so that no name runs off the paper. */
function cutToFit(doc: Pen, word: Run[], width: number, size: number): Run[][] {
  const fits = (signs: Run[]) => widthOf(doc, join([signs]), size) <= width;
  if (fits(word)) return [word];
  const signs = word.flatMap(({ text, font }) => [...text].map((sign): Run => ({ text: sign, font })));
  const pieces: Run[][] = [];
  let from = 0;
  for (let to = 1; to < signs.length; to++) {
    if (fits(signs.slice(from, to + 1))) continue;
    const hyphen = signs.slice(from, to).findLastIndex(({ text }) => text === '-');
    const cut = hyphen >= 0 ? from + hyphen + 1 : to;
    pieces.push(join([signs.slice(from, cut)]));
    from = cut;
    to = cut;
  }
  return [...pieces, join([signs.slice(from)])];
}

export function breakLines(doc: Pen, text: RichText, width: number, style: TextStyle): Line[] {
  const words = wordsOf(text, style.bold ?? false).flatMap((word) => cutToFit(doc, word, width, style.size));
  const spaceWidth = widthOf(doc, [{ text: ' ', font: 'regular' }], style.size);
  const lines: Line[] = [];
  let line: Run[][] = [];
  let lineWidth = 0;
  const close = () => {
    const runs = join(line);
    lines.push({ runs, width: widthOf(doc, runs, style.size) });
  };
  for (const word of words) {
    const wordWidth = widthOf(doc, word, style.size);
    if (line.length > 0 && lineWidth + spaceWidth + wordWidth > width) {
      close();
      line = [];
      lineWidth = 0;
    }
    lineWidth += (line.length > 0 ? spaceWidth : 0) + wordWidth;
    line.push(word);
  }
  if (line.length > 0) close();
  return lines;
}

export function drawLines(doc: Pen, lines: Line[], at: { x: number; y: number; width: number }, style: TextStyle): number {
  const step = style.size * style.leading;
  lines.forEach((line, index) => {
    const slack = at.width - line.width;
    let x = at.x + (style.align === 'right' ? slack : style.align === 'center' ? slack / 2 : 0);
    const baseline = at.y + index * step + (step - style.size) / 2 + style.size * 0.87;
    doc.fillColor(style.color);
    line.runs.forEach(({ text, font }, nth) => {
      // The space that a line break stands for is kept, or words would grow together where text is read out or copied.
      const end = nth === line.runs.length - 1 ? ' ' : '';
      doc.font(font).fontSize(style.size).text(text + end, x, baseline, { lineBreak: false, baseline: 'alphabetic', ...shaping(font) });
      x += doc.widthOfString(text, shaping(font));
    });
  });
  return lines.length * step;
}
