import { wordsOnPaper, type Words } from '#libs/words/words';
import { drawLetterhead } from './print/letterhead.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, QUIET, RULE, Sheet, mm, type Element } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import { CONSENT_COPY_TEMPLATE_VERSION, type ConsentCopySnapshot, type ConsentPurpose } from './snapshots.js';
import { CONSENT_TEXTS } from './texts/en.js';
import { dayWords, momentWords, transponderWords } from './words.js';

const LEFT = mm(20);
const RIGHT = mm(20);
const TEXT_AT = mm(54);
const TOP = mm(17);
const BOTTOM = mm(22);
const BODY: TextStyle = { size: 10.5, leading: 1.45, color: INK };
const ANSWER: TextStyle = { size: 15, leading: 1.25, color: INK, bold: true };
const SMALL: TextStyle = { size: 8.5, leading: 1.4, color: QUIET };
const BETWEEN = mm(1.2);

export async function renderConsentCopy(snapshot: ConsentCopySnapshot): Promise<Buffer> {
  requireTemplate('consent copy', snapshot, CONSENT_COPY_TEMPLATE_VERSION);
  const t = wordsOnPaper(snapshot.lang);
  const title = t('What was agreed for {name}', { name: snapshot.dog.callName });
  const sheet = new Sheet({ paper: snapshot.paper, title, lang: snapshot.lang, issuedAt: snapshot.issuedAt });
  new ConsentPrint(sheet, t).print(snapshot, title);
  sheet.onEveryPage((page, of) => {
    const y = sheet.height - mm(15);
    const box = { x: TEXT_AT, y: y + mm(1.6), width: sheet.width - TEXT_AT - RIGHT };
    sheet.rule(TEXT_AT, y, box.width, 0.6, INK);
    sheet.artifact(() => {
      sheet.write(t('{dog}, order {order}', { dog: snapshot.dog.callName, order: snapshot.orderNumber }), box, SMALL);
      sheet.write(t('page {page} of {of}', { page, of }), box, { ...SMALL, align: 'right' });
    });
  });
  return sheet.bytes();
}

class ConsentPrint {
  private y = TOP;
  private readonly width: number;

  constructor(private readonly sheet: Sheet, private readonly t: Words) {
    this.width = sheet.width - TEXT_AT - RIGHT;
  }

  print(snapshot: ConsentCopySnapshot, title: string): void {
    const { root } = this.sheet;
    const { t } = this;
    const about = [dayWords(snapshot.issuedAt, t.language), t('Order {order}', { order: snapshot.orderNumber })];
    this.y = drawLetterhead(this.sheet, snapshot.practice, { left: LEFT, right: RIGHT, top: TOP }, about) + mm(8);
    this.write(root, 'H1', title, { size: 17, leading: 1.25, color: INK, bold: true });
    this.y += mm(2);
    this.write(root, 'P', dogLine(snapshot, t));
    this.y += BETWEEN;
    this.write(root, 'P', explainedLine(snapshot, t));
    this.y += BETWEEN;
    this.write(root, 'P', t(CONSENT_TEXTS.intro));
    this.y += mm(3);
    for (const purpose of snapshot.purposes) this.printPurpose(purpose);
    this.printSignature(snapshot);
  }

  private write(parent: Element, tag: 'P' | 'H1' | 'H2', text: string, style = BODY): void {
    this.y += this.sheet.tagged(parent, tag, () => this.sheet.write(text, { x: TEXT_AT, y: this.y, width: this.width }, style));
  }

  private room(height: number): void {
    if (this.y + height <= this.sheet.height - BOTTOM) return;
    this.sheet.newPage();
    this.y = TOP;
  }

  private texts(purpose: ConsentPurpose): [text: string, style: TextStyle][] {
    const { t } = this;
    const withdrawn = purpose.withdrawnAt ? [t('**Taken back:** {moment}.', { moment: momentWords(purpose.withdrawnAt, t.language) })] : [];
    const details = purpose.details.map(([label, value]) => `**${label}:** ${value}`);
    return [
      [purpose.text, BODY],
      ...details.map((text): [string, TextStyle] => [text, BODY]),
      [`**${t(CONSENT_TEXTS.notUndone)}:** ${purpose.cannotBeUndone}`, BODY],
      ...withdrawn.map((text): [string, TextStyle] => [text, BODY]),
      [t('Text version {version}', { version: purpose.textVersion }), SMALL],
    ];
  }

  private printPurpose(purpose: ConsentPurpose): void {
    const { sheet } = this;
    const heading: TextStyle = { ...BODY, size: 11.5, bold: true };
    const texts = this.texts(purpose);
    this.room(texts.reduce((sum, [text, style]) => sum + sheet.measure(text, this.width, style) + BETWEEN, mm(10)));
    const section = sheet.group(sheet.root, 'Sect');
    sheet.rule(LEFT, this.y, sheet.width - LEFT - RIGHT, 0.5, RULE);
    this.y += mm(2.5);
    const top = this.y;
    this.write(section, 'H2', purpose.title, heading);
    sheet.tagged(section, 'P', () => sheet.write(this.t(purpose.answer), { x: LEFT, y: top - 1.5, width: mm(30) }, ANSWER));
    for (const [text, style] of texts) {
      this.write(section, 'P', text, style);
      this.y += BETWEEN;
    }
    this.y += mm(2);
  }

  private printSignature({ signature, signer }: ConsentCopySnapshot): void {
    const { sheet } = this;
    const height = mm(22);
    this.room(height + mm(18));
    sheet.rule(LEFT, this.y, sheet.width - LEFT - RIGHT, 0.5, RULE);
    this.y += mm(3);
    const { drawn } = signature;
    if (drawn.strokes.length > 0 && drawn.width > 0 && drawn.height > 0) {
      const scale = Math.min(mm(70) / drawn.width, height / drawn.height);
      sheet.tagged(sheet.root, 'Figure', () => drawStrokes(sheet.doc, drawn.strokes, { x: TEXT_AT, y: this.y, scale }), { alt: this.t('Signature of {name}', { name: signer.name }) });
      this.y += drawn.height * scale;
      sheet.rule(TEXT_AT, this.y, mm(70), 0.5, QUIET);
      this.y += mm(1);
    }
    this.write(sheet.root, 'P', this.t('**{name}**, {role}. Signed {moment}, {how}.', { name: signer.name, role: signer.role, moment: momentWords(signature.signedAt, this.t.language), how: signature.how }));
  }
}

function dogLine({ dog }: ConsentCopySnapshot, t: Words): string {
  const names = dog.registeredName && dog.registeredName !== dog.callName ? `${dog.callName}, ${dog.registeredName}` : dog.callName;
  return `**${names}.** ${dog.breed}, ${dog.transponder ? t('transponder {number}', { number: transponderWords(dog.transponder) }) : t('no transponder')}.`;
}

function explainedLine({ explainedBy, signer }: ConsentCopySnapshot, t: Words): string {
  const authority = signer.authority ? ` ${signer.authority}.` : '';
  const explained = explainedBy ? `${t('Explained by {name}, {role}.', { ...explainedBy })} ` : '';
  return `${explained}${t('Answered by {name}, {role}.', { name: signer.name, role: signer.role })}${authority}`;
}

function drawStrokes(doc: PDFKit.PDFDocument, strokes: [number, number][][], at: { x: number; y: number; scale: number }): void {
  doc.lineCap('round').lineJoin('round').lineWidth(1.3).strokeColor(INK);
  for (const stroke of strokes) {
    stroke.forEach(([x, y], index) => {
      const [px, py] = [at.x + x * at.scale, at.y + y * at.scale];
      if (index === 0) doc.moveTo(px, py).lineTo(px, py);
      else doc.lineTo(px, py);
    });
    doc.stroke();
  }
}
