import type { PracticeOnPaper } from '../snapshots.js';
import { INK, QUIET, mm, type Sheet } from './sheet.js';

interface Margins {
  left: number;
  right: number;
  top: number;
}

/** The practice with one knot of the thread before it, and what the paper is about at the far end. Returns its lower edge. */
export function drawLetterhead(sheet: Sheet, practice: PracticeOnPaper, margins: Margins, about: string[]): number {
  const { doc } = sheet;
  const middle = margins.top + mm(4.4);
  sheet.artifact(() => {
    const ring = mm(1.6);
    const at = margins.left + mm(5.5);
    doc.lineWidth(mm(0.9)).strokeColor(INK);
    doc.moveTo(margins.left, middle).lineTo(at - ring, middle).moveTo(at + ring, middle).lineTo(margins.left + mm(11), middle).stroke();
    doc.circle(at, middle, ring).stroke();
  });
  const x = margins.left + mm(14);
  const aboutWidth = mm(48);
  const width = sheet.width - margins.right - x - aboutWidth - mm(4);
  const address = [...practice.addressLines, practice.phone].join(', ');
  const practiceBottom = sheet.tagged(sheet.root, 'P', () => {
    const nameHeight = sheet.write(practice.name, { x, y: margins.top, width }, { size: 12, leading: 1.3, color: INK, bold: true });
    return margins.top + nameHeight + sheet.write(address, { x, y: margins.top + nameHeight, width }, { size: 8.5, leading: 1.4, color: QUIET });
  });
  const aboutBottom = sheet.tagged(sheet.root, 'P', () => {
    let y = margins.top + mm(0.8);
    for (const line of about) {
      y += sheet.write(line, { x: sheet.width - margins.right - aboutWidth, y, width: aboutWidth }, { size: 8.5, leading: 1.4, color: QUIET, align: 'right' });
    }
    return y;
  });
  return Math.max(practiceBottom, aboutBottom);
}
