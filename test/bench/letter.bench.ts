import PDFDocument from 'pdfkit';
import { buffer } from 'node:stream/consumers';
import { FONTS } from '#libs/documents/print/fonts';
import { renderLetter } from '#libs/documents/letter';
import { resultLetter } from '#libs/documents/samples';
import type { BenchContext } from '../support/bench.js';
import { readPdf } from '../support/read-pdf.js';
import { inTurns } from './support/load.js';

/** The same words in the same embedded font, one paragraph a page, with no layout, no tags and no drawing. */
function barePages(pages: string[]): Promise<Buffer> {
  const document = new PDFDocument({ size: 'A4', autoFirstPage: false });
  document.registerFont('text', FONTS.regular as unknown as Buffer);
  for (const page of pages) document.addPage().font('text').fontSize(8.5).text(page);
  document.end();
  return buffer(document);
}

export async function run({ row }: BenchContext): Promise<void> {
  const { pages } = await readPdf(await renderLetter(resultLetter));
  const { ours, bare } = await inTurns(() => renderLetter(resultLetter), () => barePages(pages));
  row('one owner’s letter ÷ a bare pdfkit page with the same text', ours, 'letters/s', ours / bare);
}
