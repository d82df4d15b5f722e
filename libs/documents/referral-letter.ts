import type { Language } from '#libs/words/languages';
import { wordsOnPaper, type Words } from '#libs/words/words';
import { drawLetterhead } from './print/letterhead.js';
import type { TextStyle } from './print/rich-text.js';
import { INK, QUIET, Sheet, mm } from './print/sheet.js';
import { requireTemplate } from './print/template-version.js';
import type { DogOnPaper, Paper, PracticeOnPaper } from './snapshots.js';
import { birthWords, dayWords, transponderWords } from './words.js';

export const REFERRAL_LETTER_TEMPLATE_VERSION = 1;

/** From one practice to another: please take these pictures. */
export interface ReferralLetterSnapshot {
  templateVersion: number;
  paper: Paper;
  lang: Language;
  issuedAt: string;
  practice: PracticeOnPaper;
  to: { name: string; place: string };
  orderNumber: string;
  dog: DogOnPaper;
  studies: { title: string; version: string; views: string[]; centre: string }[];
  /** What the owner has said, question by question. */
  health: [question: string, answer: string][];
  expires: string;
  contact: { name: string; phone: string };
}

const LEFT = mm(20);
const RIGHT = mm(20);
const TEXT_AT = mm(54);
const TOP = mm(17);
const BODY: TextStyle = { size: 10.5, leading: 1.45, color: INK };
const HEAD: TextStyle = { ...BODY, size: 11.5, bold: true };
const SMALL: TextStyle = { size: 8.5, leading: 1.4, color: QUIET };

export async function renderReferralLetter(s: ReferralLetterSnapshot): Promise<Buffer> {
  requireTemplate('referral letter', s, REFERRAL_LETTER_TEMPLATE_VERSION);
  const t = wordsOnPaper(s.lang);
  const day = (date: string) => dayWords(date, s.lang);
  const sheet = new Sheet({ paper: s.paper, title: t('Referral of {name}', { name: s.dog.callName }), lang: s.lang, issuedAt: s.issuedAt });
  const width = sheet.width - TEXT_AT - RIGHT;
  let y = drawLetterhead(sheet, s.practice, { left: LEFT, right: RIGHT, top: TOP }, [day(s.issuedAt), t('Order {order}', { order: s.orderNumber })]) + mm(8);
  const write = (tag: 'P' | 'H1' | 'H2', text: string, style = BODY, after = mm(2)): void => {
    if (y + sheet.measure(text, width, style) > sheet.height - mm(24)) {
      sheet.newPage();
      y = TOP;
    }
    y += sheet.tagged(sheet.root, tag, () => sheet.write(text, { x: TEXT_AT, y, width }, style)) + after;
  };
  write('P', `${s.to.name}${s.to.place ? `, ${s.to.place}` : ''}`, BODY, mm(6));
  write('H1', t('Please take these pictures of {name}', { name: s.dog.callName }), { ...HEAD, size: 17 }, mm(4));
  write('P', dogWords(s.dog, t));
  write('P', t('The owner has agreed that you see this order. Please say yes or no by **{day}**: you find it under Orders, as {order}.', { day: day(s.expires), order: s.orderNumber }), BODY, mm(5));
  for (const study of s.studies) {
    write('H2', t('{study}, version {version}', { study: study.title, version: study.version }), HEAD, mm(1));
    write('P', t('{views}. Every film goes to {centre}.', { views: study.views.join('; '), centre: study.centre || t('the reading centre') }), BODY, mm(4));
  }
  if (s.health.length > 0) write('H2', t('What the owner said of its health'), HEAD, mm(1));
  for (const [question, answer] of s.health) write('P', `${question} **${answer}**`, BODY, mm(0.5));
  y += mm(4);
  write('P', t('Whether the dog is fit for sedation or anaesthesia is for the veterinarian who examines it on the day, under the law and the codes of the place. Nothing is prescribed here.'));
  write('P', t('Questions: {name}, {phone}.', { name: s.contact.name, phone: s.contact.phone }));
  sheet.onEveryPage((page, of) => {
    const words = t('{dog}, order {order}, page {page} of {of}', { dog: s.dog.callName, order: s.orderNumber, page, of });
    sheet.artifact(() => sheet.write(words, { x: TEXT_AT, y: sheet.height - mm(14), width }, SMALL));
  });
  return sheet.bytes();
}

function dogWords(dog: DogOnPaper, t: Words): string {
  const names = dog.registeredName && dog.registeredName !== dog.callName ? `${dog.callName}, ${dog.registeredName}` : dog.callName;
  const told = { names, breed: dog.breed, sex: t.known(dog.sex), birth: birthWords(dog.birth, t.language) };
  return dog.transponder
    ? t('**{names}.** {breed}, {sex}, born {birth}, transponder {number}.', { ...told, number: transponderWords(dog.transponder) })
    : t('**{names}.** {breed}, {sex}, born {birth}, no transponder.', told);
}
