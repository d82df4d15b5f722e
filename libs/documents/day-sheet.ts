import { inAList } from '#libs/contracts/in-a-list';
import { KNOT_SIZE, drawKnots } from './print/knots.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, MARK, QUIET, RULE, Sheet, mm, type Element } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import { DAY_SHEET_STEPS, DAY_SHEET_TEMPLATE_VERSION, type DaySheetSnapshot, type DaySheetVisit } from './snapshots.js';
import { listWords, timeWords, weekdayWords } from './words.js';

const SIDE = mm(12);
const TOP = mm(12);
const BOTTOM = mm(14);
const GAP = mm(2);
const STEP = mm(10.5);
const KNOTS_WIDTH = KNOT_SIZE + STEP * (DAY_SHEET_STEPS.length - 1);
const CELL: TextStyle = { size: 9, leading: 1.3, color: INK };
const HEAD: TextStyle = { size: 7.5, leading: 1.3, color: QUIET };
const SMALL: TextStyle = { size: 8.5, leading: 1.4, color: QUIET };

interface Column {
  name: string;
  x: number;
  width: number;
}

export async function renderDaySheet(snapshot: DaySheetSnapshot): Promise<Buffer> {
  requireTemplate('day sheet', snapshot, DAY_SHEET_TEMPLATE_VERSION);
  const title = weekdayWords(snapshot.date);
  const sheet = new Sheet({ paper: snapshot.paper, landscape: true, title: `Day sheet, ${title}`, lang: snapshot.lang, issuedAt: snapshot.issuedAt });
  new DaySheetPrint(sheet).print(snapshot, title);
  sheet.onEveryPage((page, of) => {
    const box = { x: SIDE, y: sheet.height - mm(10), width: sheet.width - 2 * SIDE };
    sheet.artifact(() => sheet.write(`page ${page} of ${of}`, box, { ...HEAD, align: 'right' }));
  });
  return sheet.bytes();
}

/** Shares of the room beside the knots, in the order a nurse reads a row. */
const SHARES: [name: string, share: number][] = [
  ['Time', 13], ['Dog', 33], ['Transponder', 20], ['Owner, phone', 31], ['Studies', 19], ['Room, operator, vet, nurse', 30],
  ['', 0], ['Waits for', 35], ['Weight, kg', 17],
];

class DaySheetPrint {
  private y = TOP;
  private readonly columns: Column[];

  constructor(private readonly sheet: Sheet) {
    const free = sheet.width - 2 * SIDE - KNOTS_WIDTH - GAP * (SHARES.length - 1);
    const all = SHARES.reduce((sum, [, share]) => sum + share, 0);
    let x = SIDE;
    this.columns = SHARES.map(([name, share]) => {
      const width = name === '' ? KNOTS_WIDTH : (free * share) / all;
      const column = { name, x, width };
      x += width + GAP;
      return column;
    });
  }

  print(snapshot: DaySheetSnapshot, title: string): void {
    const { sheet } = this;
    const width = sheet.width - 2 * SIDE;
    const about = `${snapshot.practice.name}, ${snapshot.practice.addressLines.at(-1) ?? ''}. Printed ${timeWords(snapshot.issuedAt)} by ${snapshot.printedBy}. ${snapshot.visits.length} to come. Fill a knot when its step is done.`;
    this.y += sheet.tagged(sheet.root, 'H1', () => sheet.write(title, { x: SIDE, y: this.y, width }, { size: 19, leading: 1.25, color: INK, bold: true }));
    this.y += sheet.tagged(sheet.root, 'P', () => sheet.write(about, { x: SIDE, y: this.y, width }, SMALL));
    this.y += mm(2);
    const table = sheet.group(sheet.root, 'Table');
    this.printHead(table);
    for (const visit of snapshot.visits) this.printVisit(table, visit);
    if (snapshot.visits.length === 0) {
      sheet.tagged(sheet.root, 'P', () => sheet.write('Nobody is booked for this day.', { x: SIDE, y: this.y + mm(4), width }, CELL));
    }
  }

  private printHead(table: Element | null): void {
    const { sheet } = this;
    sheet.rule(SIDE, this.y, sheet.width - 2 * SIDE, mm(0.6), INK);
    const y = this.y + mm(1);
    const row = table ? sheet.group(table, 'TR') : null;
    for (const column of this.columns) {
      const draw = () => (column.name === '' ? this.stepNames(column, y) : sheet.write(column.name, { x: column.x, y, width: column.width - mm(1) }, HEAD));
      if (row) sheet.tagged(row, 'TH', draw, { scope: 'Column' });
      else sheet.artifact(draw);
    }
    this.y = y + HEAD.size * HEAD.leading * 2 + mm(0.6);
    sheet.rule(SIDE, this.y, sheet.width - 2 * SIDE, 0.7, INK);
  }

  private stepNames(column: Column, y: number): void {
    DAY_SHEET_STEPS.forEach((name, index) => {
      const middle = column.x + KNOT_SIZE / 2 + index * STEP;
      this.sheet.write(name, { x: middle - STEP * 0.75, y, width: STEP * 1.5 }, { ...HEAD, size: 6.6, align: 'center' });
    });
  }

  private cells(visit: DaySheetVisit): string[] {
    const ending = visit.dog.transponder ? `…${visit.dog.transponder.slice(-6, -3)}\u00a0${visit.dog.transponder.slice(-3)}` : 'none';
    return [
      `**${visit.time}**`,
      `**${visit.dog.callName}**\n${visit.dog.breed}`,
      ending,
      `${visit.owner.name}\n${visit.owner.phone.replaceAll(' ', '\u00a0')}`,
      inAList(visit.studies),
      `${visit.room}\n${visit.staff.join(', ')}`,
      '',
      visit.waitsFor ? `**${visit.waitsFor.what}** ${visit.waitsFor.how}` : '',
      '',
    ];
  }

  private printVisit(table: Element, visit: DaySheetVisit): void {
    const { sheet, columns } = this;
    const lines = this.cells(visit).map((cell) => cell.split('\n'));
    const style = (index: number): TextStyle => (index === 0 ? { ...CELL, size: 12, leading: 1.2 } : CELL);
    const heights = lines.map((texts, index) => texts.reduce((sum, text) => sum + sheet.measure(text, columns[index]?.width ?? 0, style(index)), 0));
    const height = Math.max(KNOT_SIZE, ...heights) + 2 * mm(1.7);
    if (this.y + height > sheet.height - BOTTOM) {
      sheet.newPage();
      this.y = TOP;
      this.printHead(null);
    }
    const middle = this.y + height / 2;
    const row = sheet.group(table, 'TR');
    columns.forEach((column, index) => {
      let y = middle - (heights[index] ?? 0) / 2;
      if (column.name === '') {
        const alt = stepsInWords(visit);
        sheet.tagged(sheet.group(row, 'TD'), 'Figure', () => drawKnots(sheet.doc, visit.steps, { x: column.x, y: middle, step: STEP }), { alt });
        return;
      }
      sheet.tagged(row, index === 0 ? 'TH' : 'TD', () => {
        for (const text of lines[index] ?? []) y += sheet.write(text, { x: column.x, y, width: column.width }, style(index));
      }, index === 0 ? { scope: 'Row' } : {});
    });
    this.y += height;
    this.printRowEnd();
  }

  /** The weight is written by hand, on dots. */
  private printRowEnd(): void {
    const { sheet, columns } = this;
    const weight = columns.at(-1);
    if (!weight) return;
    sheet.rule(SIDE, this.y, weight.x - SIDE - GAP, 0.5, RULE);
    sheet.artifact(() => {
      sheet.doc.lineWidth(0.8).strokeColor(MARK).dash(0.8, { space: 1.6 });
      sheet.doc.moveTo(weight.x, this.y).lineTo(weight.x + weight.width, this.y).stroke().undash();
    });
  }
}

function stepsInWords(visit: DaySheetVisit): string {
  const named = (mark: DaySheetVisit['steps'][number]) => DAY_SHEET_STEPS.filter((_, index) => visit.steps[index] === mark);
  const [done, hold, open] = [named('done'), named('hold'), named('open')];
  return [
    ...(done.length > 0 ? [`Done: ${listWords(done)}.`] : []),
    ...(hold.length > 0 ? [`On hold at: ${listWords(hold)}.`] : []),
    ...(open.length > 0 ? [`To come: ${listWords(open)}.`] : []),
  ].join(' ');
}
