import { drawLetterhead } from './print/letterhead.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, QUIET, RULE, Sheet, mm, type Element } from './print/sheet.js';
import type { DogOnPaper, Moment, Paper, PracticeOnPaper } from './snapshots.js';
import { momentWords, transponderWords } from './words.js';

export interface FrozenRecord {
  paper: Paper;
  issuedAt: Moment;
  practice: PracticeOnPaper;
  orderNumber: string;
  dog: DogOnPaper;
  /** What happened, in one or two sentences. */
  said: string;
  speaksWithFamily: string;
  madeFor: string;
  /** Tables in the order in which they are read; an empty one says so. */
  tables: { title: string; head: string[]; widths: number[]; rows: string[][] }[];
}

const SIDE = mm(17);
const TOP = mm(17);
const BOTTOM = mm(22);
const BODY: TextStyle = { size: 10, leading: 1.4, color: INK };
const CELL: TextStyle = { size: 8.5, leading: 1.35, color: INK };
const SMALL: TextStyle = { size: 8.5, leading: 1.4, color: QUIET };
const GAP = mm(2);

/** A frozen record on paper, for whoever answers for it: batches, readings, everything with who and when, and the late entries apart. */
export async function renderFrozenRecord(record: FrozenRecord): Promise<Buffer> {
  const sheet = new Sheet({ paper: record.paper, title: `Record of ${record.dog.callName}, order ${record.orderNumber}`, lang: 'en', issuedAt: record.issuedAt });
  new RecordPrint(sheet).print(record);
  sheet.onEveryPage((page, of) => {
    const y = sheet.height - mm(15);
    const box = { x: SIDE, y: y + mm(1.6), width: sheet.width - 2 * SIDE };
    sheet.rule(SIDE, y, box.width, 0.6, INK);
    sheet.artifact(() => {
      sheet.write(`Order ${record.orderNumber}. Made for ${record.madeFor}, ${momentWords(record.issuedAt)}.`, box, SMALL);
      sheet.write(`page ${page} of ${of}`, box, { ...SMALL, align: 'right' });
    });
  });
  return sheet.bytes();
}

class RecordPrint {
  private y = TOP;
  private readonly width: number;

  constructor(private readonly sheet: Sheet) {
    this.width = sheet.width - 2 * SIDE;
  }

  print(record: FrozenRecord): void {
    const { sheet } = this;
    const { dog } = record;
    this.y = drawLetterhead(sheet, record.practice, { left: SIDE, right: SIDE, top: TOP }, [momentWords(record.issuedAt), `Order ${record.orderNumber}`]) + mm(8);
    this.write(sheet.root, 'H1', `Record of ${dog.callName}, kept as it was`, { size: 17, leading: 1.25, color: INK, bold: true });
    this.y += mm(2);
    this.write(sheet.root, 'P', `${dog.registeredName ? `${dog.registeredName}. ` : ''}${dog.breed}, ${dog.transponder ? `transponder ${transponderWords(dog.transponder)}` : 'no transponder'}.`);
    this.write(sheet.root, 'P', record.said);
    this.write(sheet.root, 'P', `Speaks with the family: ${record.speaksWithFamily}.`);
    for (const table of record.tables) this.table(table);
  }

  private write(parent: Element, tag: 'P' | 'H1' | 'H2', text: string, style = BODY): void {
    this.y += this.sheet.tagged(parent, tag, () => this.sheet.write(text, { x: SIDE, y: this.y, width: this.width }, style));
  }

  private room(height: number): void {
    if (this.y + height <= this.sheet.height - BOTTOM) return;
    this.sheet.newPage();
    this.y = TOP;
  }

  private table({ title, head, widths, rows }: FrozenRecord['tables'][number]): void {
    this.y += mm(5);
    this.room(mm(25));
    const section = this.sheet.group(this.sheet.root, 'Sect');
    this.write(section, 'H2', title, { ...BODY, size: 12, bold: true });
    this.y += mm(1);
    if (rows.length === 0) return this.write(section, 'P', 'None.');
    const table = this.sheet.group(section, 'Table');
    this.row(table, 'TH', head, widths, SMALL);
    for (const row of rows) this.row(table, 'TD', row, widths, CELL);
  }

  private row(table: Element, tag: 'TH' | 'TD', cells: string[], widths: number[], style: TextStyle): void {
    const whole = widths.reduce((sum, w) => sum + w, 0);
    const columns = widths.map((w) => (w / whole) * this.width - GAP);
    const height = Math.max(...cells.map((cell, i) => this.sheet.measure(cell, columns[i]!, style)));
    this.room(height + mm(2));
    const row = this.sheet.group(table, 'TR');
    let x = SIDE;
    cells.forEach((cell, i) => {
      this.sheet.tagged(row, tag, () => this.sheet.write(cell, { x, y: this.y, width: columns[i]! }, style), tag === 'TH' ? { scope: 'Column' } : {});
      x += columns[i]! + GAP;
    });
    this.y += height + mm(0.8);
    this.sheet.rule(SIDE, this.y, this.width, 0.4, RULE);
    this.y += mm(0.8);
  }
}
