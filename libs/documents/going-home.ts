import { languages } from '#libs/words/languages';
import { wordsOnPaper, type Words } from '#libs/words/words';
import { DoseOnPaperError, dosesIn } from './doses.js';
import { dogWords } from './dog-words.js';
import { readLightMarkup, type Block } from './print/light-markup.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, QUIET, Sheet, mm, type Element } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import { GOING_HOME_TEMPLATE_VERSION, type GoingHomeSnapshot } from './snapshots.js';
import { GOING_HOME_TEXTS as T } from './texts/en.js';
import { dayWords, momentWords, timeWords, weekdayWords } from './words.js';

const SIDE = mm(17);
const FOOT = mm(34);

/** Read at night, by a worried person, at arm's length: as large as one page allows. */
const SIZES = [16, 15, 14, 13, 12, 11, 10, 9, 8];

export async function renderGoingHome(snapshot: GoingHomeSnapshot): Promise<Buffer> {
  requireTemplate('going-home sheet', snapshot, GOING_HOME_TEMPLATE_VERSION);
  const { normal, whatToDo, callAtOnce } = snapshot.text;
  const doses = dosesIn([normal, whatToDo, callAtOnce, snapshot.pictures, snapshot.resultWhen].join('\n'));
  if (doses.length > 0) throw new DoseOnPaperError(doses);
  const t = wordsOnPaper(snapshot.lang);
  for (const size of SIZES) {
    const sheet = new Sheet({
      paper: snapshot.paper, title: t('{name} goes home', { name: snapshot.dog.callName }), lang: snapshot.lang, issuedAt: snapshot.issuedAt,
    });
    const end = new GoingHomePrint(sheet, size, t).print(snapshot);
    if (end <= sheet.height - FOOT) {
      printHands(sheet, snapshot, t);
      return sheet.bytes();
    }
  }
  throw new RangeError('The going-home text does not fit one page. Shorten it: on a second page it would not be read at night.');
}

function printHands(sheet: Sheet, snapshot: GoingHomeSnapshot, t: Words): void {
  const y = sheet.height - mm(25);
  const gap = mm(6);
  const width = (sheet.width - 2 * SIDE - 2 * gap) / 3;
  const hands = [
    [t('explained by'), `${snapshot.explainedBy.name}, ${snapshot.explainedBy.role}`],
    [t('to'), `${snapshot.explainedTo.name}, ${snapshot.explainedTo.role}`],
    [t('time, hand'), snapshot.explainedAt ? momentWords(snapshot.explainedAt, snapshot.lang) : ''],
  ] as const;
  hands.forEach(([label, value], index) => {
    const box = { x: SIDE + index * (width + gap), y: y + mm(1), width };
    sheet.rule(box.x, y, width, 0.8, INK);
    sheet.tagged(sheet.root, 'P', () => {
      const height = sheet.write(label, box, { size: 10, leading: 1.35, color: QUIET });
      sheet.write(value, { ...box, y: box.y + height }, { size: 10, leading: 1.35, color: INK, bold: true });
    });
  });
}

class GoingHomePrint {
  private y = mm(13);
  private readonly body: TextStyle;

  constructor(private readonly sheet: Sheet, private readonly size: number, private readonly t: Words) {
    this.body = { size, leading: 1.36, color: INK };
  }

  print(snapshot: GoingHomeSnapshot): number {
    const { root } = this.sheet;
    const { t } = this;
    const dog = dogWords(snapshot);
    const { practice, sleep, text, lang } = snapshot;
    const small: TextStyle = { size: 10.5, leading: 1.4, color: QUIET };
    const place = [practice.name, ...practice.addressLines].join(', ');
    this.write(root, 'P', t('{place}. Going-home sheet, {day}', { place, day: weekdayWords(snapshot.date, lang) }), small);
    this.write(root, 'H1', t('{name} goes home', dog), { size: this.size * 2.1, leading: 1.2, color: INK, bold: true });
    this.y += mm(1);
    const slept = t(sleep.reversed ? T.reversed : T.woke, { ...dog, from: timeWords(sleep.from), until: timeWords(sleep.until) });
    this.write(root, 'P', `${slept} ${t(T.recovered, { ...dog, at: timeWords(sleep.recoveredAt) })} ${snapshot.pictures}`);
    if (text.lang) this.write(root, 'P', t('This text of the practice is written in {language}.', { language: t(languages[text.lang].name) }), small);
    this.topic(t(T.normal), text.normal);
    this.topic(t(T.whatToDo), text.whatToDo);
    this.callBox(snapshot);
    this.y += mm(3.5);
    const approved = t('Text {version}, approved by {name}, {role}, {day}.', { version: text.version, ...text.approvedBy, day: dayWords(text.approvedOn, lang) });
    this.write(root, 'P', `${t(T.tellVets, dog)} ${snapshot.resultWhen} ${approved}`, { ...small, color: INK });
    return this.y;
  }

  private write(parent: Element, tag: 'P' | 'H1' | 'H2', text: string, style = this.body, inset = 0): void {
    const box = { x: SIDE + inset, y: this.y, width: this.sheet.width - 2 * (SIDE + inset) };
    this.y += this.sheet.tagged(parent, tag, () => this.sheet.write(text, box, style));
  }

  private topic(heading: string, text: string): void {
    const section = this.sheet.group(this.sheet.root, 'Sect');
    this.y += mm(4.5);
    this.sheet.rule(SIDE, this.y, this.sheet.width - 2 * SIDE, mm(0.6), INK);
    this.y += mm(1.6);
    this.write(section, 'H2', heading, { size: this.size * 1.12, leading: 1.35, color: INK, bold: true });
    this.y += mm(1);
    this.blocks(section, readLightMarkup(text), 0);
  }

  private blocks(section: Element, blocks: Block[], inset: number): void {
    for (const block of blocks) {
      if (block.kind === 'paragraph') this.write(section, 'P', block.text, this.body, inset);
      else this.list(section, block.items, inset);
    }
  }

  /** Two columns, read down the first and then the second, where every item keeps to one line. */
  private list(section: Element, items: string[], inset: number): void {
    const list = this.sheet.group(section, 'L');
    const full = this.sheet.width - 2 * (SIDE + inset);
    const dash = this.size * 0.9;
    const gap = mm(6);
    const rows = Math.ceil(items.length / 2);
    const widest = (some: string[]) => Math.max(0, ...some.map((item) => this.sheet.widthOf(item, this.body))) + dash;
    const first = widest(items.slice(0, rows)) + gap;
    const second = widest(items.slice(rows));
    const two = first + second <= full;
    const secondAt = Math.min(Math.max(first, (full + gap) / 2), full - second);
    const inColumn = two ? rows : items.length;
    const top = this.y;
    let bottom = top;
    items.forEach((item, index) => {
      if (index % inColumn === 0) this.y = top;
      const x = SIDE + inset + (index < inColumn ? 0 : secondAt);
      const entry = this.sheet.group(list, 'LI');
      this.sheet.tagged(entry, 'Lbl', () => this.sheet.write('–', { x, y: this.y, width: dash }, this.body));
      this.y += this.sheet.tagged(entry, 'LBody', () => this.sheet.write(item, { x: x + dash, y: this.y, width: full - dash }, this.body));
      bottom = Math.max(bottom, this.y);
    });
    this.y = bottom;
  }

  private callBox({ call, text, dog }: GoingHomeSnapshot): void {
    const section = this.sheet.group(this.sheet.root, 'Sect');
    const inset = mm(6);
    this.y += mm(5);
    const top = this.y;
    this.y += mm(3);
    this.write(section, 'H2', this.t(T.call, dogWords({ dog })), { size: this.size * 1.3, leading: 1.3, color: INK, bold: true }, inset);
    this.y += mm(0.5);
    this.blocks(section, readLightMarkup(text.callAtOnce), inset);
    this.y += mm(0.5);
    this.write(section, 'P', `${this.t(T.worried)} ${call.when}`, this.body, inset);
    const phone = call.phone.replaceAll(' ', '\u00a0');
    this.write(section, 'P', phone, { size: this.size * 2.7, leading: 1.2, color: INK, bold: true }, inset);
    this.y += mm(2);
    this.sheet.artifact(() => {
      this.sheet.doc.lineJoin('miter').lineWidth(mm(1)).strokeColor(INK);
      this.sheet.doc.rect(SIDE + mm(0.5), top, this.sheet.width - 2 * SIDE - mm(1), this.y - top).stroke();
    });
  }
}
