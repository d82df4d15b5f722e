import { wordsOnPaper, type Words } from '#libs/words/words';
import type { JointRow, LetterBlock, LetterPart, Line } from './letter-blocks.js';
import { letterParts, letterTitle } from './letter-parts.js';
import { drawLetterhead } from './print/letterhead.js';
import { drawLineOfTwenty, lineHeight } from './print/line-of-twenty.js';
import { plain, type TextStyle } from './print/rich-text.js';
import { INK, QUIET, RULE, Sheet, mm, type Element } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import { LETTER_TEMPLATE_VERSION, type LetterSnapshot } from './snapshots.js';
import { dayWords } from './words.js';

const LEFT = mm(20);
const RIGHT = mm(20);
const TEXT_AT = mm(54);
const TOPIC_WIDTH = mm(31);
const TOP = mm(17);
const BOTTOM = mm(25);

const BODY: TextStyle = { size: 10.5, leading: 1.45, color: INK };
const TOPIC: TextStyle = { size: 9.5, leading: 1.3, color: INK, bold: true };
const SMALL: TextStyle = { size: 8.5, leading: 1.4, color: QUIET };
const BESIDE: TextStyle = { size: 9.5, leading: 1.4, color: INK };
const VALUE: TextStyle = { size: 13, leading: 1.45, color: INK, bold: true };
const SUBHEADING: TextStyle = { ...BODY, bold: true };
const BETWEEN_BLOCKS = mm(1.4);
const BETWEEN_PARTS = mm(4.2);
const CELL = mm(1);
const SIGNATURE_HEIGHT = mm(22) + BETWEEN_PARTS;

export async function renderLetter(letter: LetterSnapshot): Promise<Buffer> {
  requireTemplate('letter', letter, LETTER_TEMPLATE_VERSION);
  const title = letterTitle(letter);
  const sheet = new Sheet({ paper: letter.paper, title, lang: letter.lang, issuedAt: letter.issuedAt });
  const t = wordsOnPaper(letter.lang);
  new LetterPrint(sheet, t).print(letter, title);
  sheet.onEveryPage((page, of) => drawFoot(sheet, letter, t('page {page} of {of}', { page, of })));
  return sheet.bytes();
}

function drawFoot(sheet: Sheet, letter: LetterSnapshot, page: string): void {
  const y = sheet.height - mm(17);
  const box = { x: TEXT_AT, y: y + mm(1.6), width: sheet.width - TEXT_AT - RIGHT };
  sheet.rule(TEXT_AT, y, box.width, 0.6, INK);
  sheet.artifact(() => {
    const about = wordsOnPaper(letter.lang)('{dog}, order {order}', { dog: letter.dog.callName, order: letter.orderNumber });
    sheet.write(`${about}, ${dayWords(letter.issuedAt, letter.lang)}`, box, SMALL);
    sheet.write(page, box, { ...SMALL, align: 'right' });
  });
}

/** Topics stand in the margin, so that a reader can jump; text stands beside them. */
class LetterPrint {
  private y = TOP;
  private readonly width: number;

  constructor(private readonly sheet: Sheet, private readonly t: Words) {
    this.width = sheet.width - TEXT_AT - RIGHT;
  }

  print(letter: LetterSnapshot, title: string): void {
    const { sheet, t } = this;
    const about = [dayWords(letter.issuedAt, letter.lang), t('Order {order}', { order: letter.orderNumber })];
    this.y = drawLetterhead(sheet, letter.practice, { left: LEFT, right: RIGHT, top: TOP }, about) + mm(7);
    sheet.tagged(sheet.root, 'P', () => {
      for (const line of [letter.addressee.name, ...letter.addressee.lines]) {
        this.y += sheet.write(line, this.box(this.y), { ...BODY, leading: 1.4 });
      }
    });
    this.y += mm(7);
    this.y += sheet.tagged(sheet.root, 'H1', () => sheet.write(title, this.box(this.y), { size: 17, leading: 1.25, color: INK, bold: true }));
    this.y += mm(4);
    const parts = letterParts(letter);
    // A signature never stands alone on a page: the last topic goes with it.
    parts.forEach((part, index) => this.printPart(part, index === parts.length - 1 ? SIGNATURE_HEIGHT : 0));
    this.printSignature(letter);
  }

  private box(y: number) {
    return { x: TEXT_AT, y, width: this.width };
  }

  private room(height: number): void {
    if (this.y + height <= this.sheet.height - BOTTOM) return;
    this.sheet.newPage();
    this.y = TOP;
  }

  private printPart({ heading, blocks }: LetterPart, heightAfter: number): void {
    if (blocks.length === 0) return;
    const section = this.sheet.group(this.sheet.root, 'Sect');
    const topicHeight = this.sheet.measure(heading, TOPIC_WIDTH, TOPIC);
    // A topic never stands alone at the foot of a page, nor does a subheading.
    const opening = blocks.slice(0, blocks[1]?.kind === 'subheading' ? 4 : 1).reduce((sum, block) => sum + this.heightOf(block) + BETWEEN_BLOCKS, 0);
    this.room(Math.max(topicHeight, opening) + heightAfter);
    const startedAt = this.y;
    this.sheet.tagged(section, 'H2', () => this.sheet.write(heading, { x: LEFT, y: this.y + 0.8, width: TOPIC_WIDTH }, TOPIC));
    blocks.forEach((block, index) => {
      if (index > 0) this.y += block.kind === 'subheading' ? BETWEEN_BLOCKS * 2 : BETWEEN_BLOCKS;
      const held = block.kind === 'subheading' ? blocks.slice(index, index + 3) : [block];
      if (index > 0) this.room(held.reduce((sum, each) => sum + this.heightOf(each) + BETWEEN_BLOCKS, 0));
      this.printBlock(section, block);
    });
    if (this.y > startedAt) this.y = Math.max(this.y, startedAt + topicHeight);
    this.y += BETWEEN_PARTS;
  }

  private heightOf(block: LetterBlock): number {
    if (block.kind === 'paragraph') return this.sheet.measure(block.text, this.width, BODY);
    if (block.kind === 'subheading') return this.sheet.measure(block.text, this.width, SUBHEADING);
    if (block.kind === 'small') return this.sheet.measure(block.text, this.width, BESIDE);
    if (block.kind === 'twenty') return lineHeight(block.line, this.sheet.width - LEFT - RIGHT);
    if (block.kind === 'list') return block.items.reduce((sum, item) => sum + this.sheet.measure(item, this.width - mm(4), BODY), 0);
    return block.rows.reduce((sum, row) => sum + this.rowHeight(row), 0);
  }

  private printBlock(section: Element, block: LetterBlock): void {
    const { sheet } = this;
    if (block.kind === 'paragraph') this.y += sheet.tagged(section, 'P', () => sheet.write(block.text, this.box(this.y), BODY));
    else if (block.kind === 'subheading') this.y += sheet.tagged(section, 'H3', () => sheet.write(block.text, this.box(this.y), SUBHEADING));
    else if (block.kind === 'small') this.y += sheet.tagged(section, 'P', () => sheet.write(block.text, this.box(this.y), BESIDE));
    else if (block.kind === 'twenty') this.printLine(section, block.line);
    else if (block.kind === 'list') this.printList(section, block.items);
    else this.printJoints(section, block.rows);
  }

  /** Over the whole width of the paper, so that the dogs can be told apart. */
  private printLine(section: Element, line: Line): void {
    const { sheet } = this;
    const width = sheet.width - LEFT - RIGHT;
    sheet.tagged(section, 'Figure', () => drawLineOfTwenty(sheet, line, { x: LEFT, y: this.y, width }, this.t), { alt: line.described });
    this.y += lineHeight(line, width);
  }

  private printList(section: Element, items: string[]): void {
    const list = this.sheet.group(section, 'L');
    for (const item of items) {
      const entry = this.sheet.group(list, 'LI');
      this.sheet.tagged(entry, 'Lbl', () => this.sheet.write('–', this.box(this.y), BODY));
      const box = { x: TEXT_AT + mm(4), y: this.y, width: this.width - mm(4) };
      this.y += this.sheet.tagged(entry, 'LBody', () => this.sheet.write(item, box, BODY));
    }
  }

  private columns({ words }: JointRow) {
    const name = mm(23);
    // A reason stands where a value would and may take the room of the words.
    const value = words ? mm(24) : this.width - name;
    return { name, value, words: this.width - name - value };
  }

  private rowHeight(row: JointRow): number {
    const columns = this.columns(row);
    const words = row.words ? this.sheet.measure(row.words, columns.words, BODY) : 0;
    return Math.max(this.sheet.measure(row.value, columns.value, VALUE), words + mm(0.9)) + 2 * CELL;
  }

  private printJoints(section: Element, rows: JointRow[]): void {
    const table = this.sheet.group(section, 'Table');
    for (const row of rows) {
      const columns = this.columns(row);
      const height = this.rowHeight(row);
      const line = this.sheet.group(table, 'TR');
      const y = this.y + CELL;
      const small = y + mm(0.9);
      this.sheet.tagged(line, 'TH', () => this.sheet.write(row.name, { x: TEXT_AT, y: small, width: columns.name }, BODY), { scope: 'Row' });
      this.sheet.tagged(line, 'TD', () => this.sheet.write(plain(row.value), { x: TEXT_AT + columns.name, y, width: columns.value }, VALUE));
      if (row.words) {
        const x = TEXT_AT + columns.name + columns.value;
        this.sheet.tagged(line, 'TD', () => this.sheet.write(row.words, { x, y: small, width: columns.words }, BODY));
      }
      this.y += height;
      this.sheet.rule(TEXT_AT, this.y, this.width, 0.5, RULE);
    }
  }

  private printSignature({ contact, issuedAt, lang }: LetterSnapshot): void {
    this.room(SIGNATURE_HEIGHT - BETWEEN_PARTS);
    this.y += mm(12);
    this.sheet.rule(TEXT_AT, this.y, mm(70), 0.5, QUIET);
    const words = `${contact.name}, ${contact.role}, ${dayWords(issuedAt, lang)}`;
    this.sheet.tagged(this.sheet.root, 'P', () => this.sheet.write(words, this.box(this.y + mm(1)), { ...SMALL, size: 9 }));
  }
}
