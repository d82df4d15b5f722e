import { wordsOnPaper, type Sentence } from '#libs/words/words';
import {
  certificateTitle, headFacts, issuerLines, protocolWords, signedWords,
} from './certificate-facts.js';
import { drawJoints } from './certificate-joints.js';
import { drawQrCode } from './print/qr.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, QUIET, RULE, Sheet, mm } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import { CERTIFICATE_TEMPLATE_VERSION, type CertificateSnapshot } from './snapshots.js';
import { CERTIFICATE_TEXTS } from './texts/en.js';
import { dogWords } from './dog-words.js';
import { listWords } from './words.js';

const SIDE = mm(20);
const FACT: TextStyle = { size: 9, leading: 1.4, color: INK };
const LABEL: TextStyle = { ...FACT, color: QUIET };
const LIMITS: TextStyle = { size: 9, leading: 1.45, color: INK };
const QR_SIZE = mm(33);

export async function renderCertificate(snapshot: CertificateSnapshot): Promise<Buffer> {
  requireTemplate('certificate', snapshot, CERTIFICATE_TEMPLATE_VERSION);
  const title = certificateTitle(snapshot, wordsOf(snapshot));
  const dog = snapshot.dog.registeredName ?? snapshot.dog.callName;
  const sheet = new Sheet({ paper: snapshot.paper, title: `${title}, ${dog}`, lang: snapshot.lang, issuedAt: snapshot.issuedAt });
  const afterTitle = printTitle(sheet, snapshot, title, mm(15));
  const afterFacts = printFacts(sheet, snapshot, afterTitle + mm(4));
  const foot = footTop(sheet);
  const results = foot - mm(4) - resultsHeight(sheet, snapshot);
  drawJoints(sheet, snapshot, { top: afterFacts + mm(4), bottom: results - mm(4), side: SIDE });
  printResults(sheet, snapshot, results);
  printFoot(sheet, snapshot, foot);
  return sheet.bytes();
}

const wordsOf = ({ lang }: CertificateSnapshot) => wordsOnPaper(lang);

const inside = (sheet: Sheet) => sheet.width - 2 * SIDE;

function printTitle(sheet: Sheet, snapshot: CertificateSnapshot, title: string, top: number): number {
  const width = inside(sheet);
  const style: TextStyle = { size: 20, leading: 1.25, color: INK, bold: true };
  let y = top + sheet.tagged(sheet.root, 'H1', () => sheet.write(title, { x: SIDE, y: top, width }, style));
  sheet.tagged(sheet.root, 'P', () => {
    issuerLines(snapshot, wordsOf(snapshot)).forEach((line, index) => {
      y += sheet.write(line, { x: SIDE, y, width }, { ...FACT, size: 9.5, color: index === 0 ? INK : QUIET });
    });
  });
  sheet.rule(SIDE, y + mm(2), width, mm(0.6), INK);
  return y + mm(2);
}

function printFacts(sheet: Sheet, snapshot: CertificateSnapshot, top: number): number {
  const table = sheet.group(sheet.root, 'Table');
  const half = inside(sheet) / 2;
  const labelWidth = mm(34);
  const facts = headFacts(snapshot, wordsOf(snapshot));
  let y = top;
  for (let index = 0; index < facts.length; index += 2) {
    const row = sheet.group(table, 'TR');
    const heights = facts.slice(index, index + 2).map(([label, value], column) => {
      const x = SIDE + column * half;
      const box = { x: x + labelWidth, y, width: half - labelWidth - mm(3) };
      const labelHeight = sheet.tagged(row, 'TH', () => sheet.write(label, { x, y, width: labelWidth - mm(2) }, LABEL), { scope: 'Row' });
      return Math.max(labelHeight, sheet.tagged(row, 'TD', () => sheet.write(value, box, { ...FACT, bold: index + column === 0 })));
    });
    y += Math.max(...heights) + mm(0.7);
  }
  return y;
}

const resultStyle: TextStyle = { size: 9.5, leading: 1.4, color: INK };

function resultTexts(snapshot: CertificateSnapshot) {
  const t = wordsOf(snapshot);
  return snapshot.studies.map((study) => ({
    name: `**${study.title}.** ${protocolWords(study, t)}`,
    result: `**${t('For the dog')}:** ${study.dogResult}${study.comment ? `. ${t('The reader adds: {comment}', { comment: study.comment })}` : ''}`,
  }));
}

const JOINTS = {
  hip: { both: 'both hips', left: 'the left hip', right: 'the right hip' },
  elbow: { both: 'both elbows', left: 'the left elbow', right: 'the right elbow' },
} as const satisfies Record<string, Record<string, Sentence>>;

function limits(snapshot: CertificateSnapshot): string {
  const t = wordsOf(snapshot);
  const joints = snapshot.studies.flatMap((study) => study.joints);
  const places = (['hip', 'elbow'] as const).flatMap((joint) => {
    const sides = [...new Set(joints.filter((each) => each.joint === joint).map(({ side }) => side))];
    return sides.length === 2 ? [t(JOINTS[joint].both)] : sides.map((side) => t(JOINTS[joint][side]));
  });
  return `${t(CERTIFICATE_TEXTS.limits, { ...dogWords(snapshot), joints: listWords(places, t.language) })} ${t(CERTIFICATE_TEXTS.caution)}`;
}

function resultColumns(sheet: Sheet) {
  const name = inside(sheet) * 0.48;
  return { name, gap: mm(5), result: inside(sheet) - name - mm(5) };
}

function resultRowHeight(sheet: Sheet, row: { name: string; result: string }): number {
  const columns = resultColumns(sheet);
  return Math.max(sheet.measure(row.name, columns.name, resultStyle), sheet.measure(row.result, columns.result, resultStyle)) + mm(3);
}

function resultsHeight(sheet: Sheet, snapshot: CertificateSnapshot): number {
  const rows = resultTexts(snapshot).reduce((sum, row) => sum + resultRowHeight(sheet, row), 0);
  return rows + mm(3) + sheet.measure(limits(snapshot), inside(sheet), LIMITS);
}

function printResults(sheet: Sheet, snapshot: CertificateSnapshot, top: number): void {
  const table = sheet.group(sheet.root, 'Table');
  const columns = resultColumns(sheet);
  let y = top;
  sheet.rule(SIDE, y, inside(sheet), 0.5, RULE);
  for (const text of resultTexts(snapshot)) {
    const row = sheet.group(table, 'TR');
    const at = y + mm(1.5);
    sheet.tagged(row, 'TH', () => sheet.write(text.name, { x: SIDE, y: at, width: columns.name }, resultStyle), { scope: 'Row' });
    const box = { x: SIDE + columns.name + columns.gap, y: at, width: columns.result };
    sheet.tagged(row, 'TD', () => sheet.write(text.result, box, resultStyle));
    y += resultRowHeight(sheet, text);
    sheet.rule(SIDE, y, inside(sheet), 0.5, RULE);
  }
  sheet.tagged(sheet.root, 'P', () => sheet.write(limits(snapshot), { x: SIDE, y: y + mm(3), width: inside(sheet) }, LIMITS));
}

const footTop = (sheet: Sheet) => sheet.height - mm(12) - QR_SIZE - mm(3);

function printFoot(sheet: Sheet, snapshot: CertificateSnapshot, top: number): void {
  const t = wordsOf(snapshot);
  sheet.rule(SIDE, top, inside(sheet), mm(0.6), INK);
  const y = top + mm(3);
  const alt = t('Code that opens {address} for {serial} and carries the signed facts', { address: snapshot.checkAddress, serial: snapshot.serial });
  sheet.tagged(sheet.root, 'Figure', () => drawQrCode(sheet.doc, snapshot.code, { x: SIDE, y, width: QR_SIZE }), { alt });
  const x = SIDE + QR_SIZE + mm(6);
  const width = sheet.width - SIDE - x;
  const small: TextStyle = { size: 8.8, leading: 1.42, color: INK };
  let at = y;
  at += sheet.tagged(sheet.root, 'P', () => sheet.write(snapshot.serial, { x, y: at, width }, { size: 13, leading: 1.3, color: INK, bold: true }));
  at += mm(0.8);
  at += sheet.tagged(sheet.root, 'P', () => sheet.write(t(CERTIFICATE_TEXTS.check, { address: snapshot.checkAddress }), { x, y: at, width }, small));
  at += mm(1);
  const closing = `${signedWords(snapshot, t)} ${t('Template {version}.', { version: snapshot.templateVersion })}`;
  sheet.tagged(sheet.root, 'P', () => sheet.write(closing, { x, y: at, width }, { ...small, color: QUIET }));
}
