import { wordsOnPaper } from '#libs/words/words';
import { dogWords } from './dog-words.js';
import type { LetterSnapshot, StudyOnPaper } from './snapshots.js';
import { LETTER_HEADINGS as H, LETTER_TEXTS as T } from './texts/en.js';
import { amongBlocks, foundBlocks, howSureBlocks, notReadBlocks } from './letter-findings.js';
import { paragraph, type LetterBlock, type LetterPart, type ResultSnapshot, type Telling } from './letter-blocks.js';
import { ageWords, birthWords, capital, dayWords, listWords, transponderWords } from './words.js';

const telling = (letter: LetterSnapshot): Telling => ({ t: wordsOnPaper(letter.lang), dog: dogWords(letter), day: (date) => dayWords(date, letter.lang) });
const part = (heading: string, texts: readonly string[]): LetterPart => ({ heading, blocks: texts.map(paragraph) });

export function letterTitle(letter: LetterSnapshot): string {
  const { t, dog } = telling(letter);
  if (letter.kind === 'correction') return t('A correction about {name}', dog);
  if (letter.kind === 'films-rejected') return t('{names} pictures need another try', dog);
  const joints = [...new Set(letter.studies.flatMap((study) => study.joints.map(({ joint }) => `${joint}s` as const)))];
  return t('{names} {joints}', { ...dog, joints: listWords(joints.sort().reverse().map((joint) => t(joint)), letter.lang) });
}

/** The letter's topics in their fixed order; the same parts make the mail's text. */
export function letterParts(letter: LetterSnapshot): LetterPart[] {
  const tell = telling(letter);
  const { t, dog, day } = tell;
  const opening = [part(t(H.whichDog), [whichDog(letter, tell)])];
  const closing = [
    part(t(H.whoSees), whoSees(letter, tell)),
    ...('check' in letter && letter.check ? [part(t(H.check), [t(T.check, letter.check)])] : []),
    part(t(H.questions), [questions(letter)]),
  ];
  const care = [part(t(H.seeVet), [t(T.seeVet, dog)]), part(t(H.afterSleep), sleep(letter, tell))];

  if (letter.kind === 'correction') {
    const { letterOf, wrong, holds, serial } = letter.corrects;
    const texts = [t(T.corrects, { day: day(letterOf) }), wrong, ...(serial ? [t(T.oldSerial, { serial })] : []), `**${holds}**`];
    return [...opening, part(t(H.whatWasWrong), texts), next(letter, tell), ...care, ...closing];
  }
  if (letter.kind === 'films-rejected') {
    return [...opening, part(t(H.whatWasDone), [taken(letter, tell)]), rejected(letter, tell), next(letter, tell, [letter.cost, t(T.again, dog)]), ...care, ...closing];
  }
  return [
    ...(letter.kind === 'amended' ? [part(t(H.whyNew), amended(letter, tell))] : []),
    ...opening,
    part(t(H.whatWasDone), [taken(letter, tell), ...letter.studies.map((study) => readBy(study, tell))]),
    { heading: t(H.whatWasFound), blocks: foundBlocks(letter.studies, tell) },
    { heading: t(H.notRead), blocks: notReadBlocks(letter, tell) },
    { heading: t(H.howSure), blocks: howSureBlocks(letter.studies, tell) },
    ...amongPart(letter, tell),
    part(t(H.cannotTell), [t(T.cannotTell, dog), t(T.onTheWhole)]),
    part(t(H.mattersToo), [t(T.mattersToo, dog)]),
    part(t(H.breeding), [t(T.breeding)]),
    next(letter, tell),
    ...care,
    part(t(H.disagree), [disagree(letter, tell)]),
    ...closing,
  ];
}

/** A result that was told before sets were frozen says nothing of the breed. */
function amongPart({ studies }: ResultSnapshot, tell: Telling): LetterPart[] {
  const blocks = amongBlocks(studies, tell);
  return blocks.length > 0 ? [{ heading: tell.t(H.among), blocks }] : [];
}

function whichDog({ dog, visit, lang }: LetterSnapshot, { t, day }: Telling): string {
  const names = [dog.callName, ...(dog.registeredName && dog.registeredName !== dog.callName ? [dog.registeredName] : [])];
  const kind = [dog.breed, ...(dog.sex === 'unknown' ? [] : [t(dog.sex)]), t('born {birth}', { birth: birthWords(dog.birth, lang) })];
  const transponder = dog.transponder ? t('Transponder {number}.', { number: transponderWords(dog.transponder) }) : t('No transponder.');
  const pictures = t('Pictures taken on {day} at {place}, at {age}.', { day: day(visit.date), place: visit.place, age: ageWords(dog.birth, visit.date, lang) });
  return `**${names.join(', ')}.** ${capital(kind.join(', '))}. ${transponder} ${pictures} ${visit.askedBy}`;
}

const TAKEN = {
  sedation: '{name} slept with medicine while {count, plural, one {one picture was} other {# pictures were}} taken.',
  anaesthesia: '{name} was under anaesthesia while {count, plural, one {one picture was} other {# pictures were}} taken.',
  none: '{name} stayed awake while {count, plural, one {one picture was} other {# pictures were}} taken.',
} as const;

function taken({ visit }: LetterSnapshot, { t, dog }: Telling): string {
  const sent = visit.allSent ? t('All of them went to the reader.') : t('Not all of them went to the reader.');
  return `${t(TAKEN[visit.rest], { ...dog, count: visit.exposures })} ${sent}`;
}

function readBy(study: StudyOnPaper, { t, day }: Telling): string {
  const criteria = study.criteria ? `, ${study.criteria}` : '';
  const read = t('read by {reader}, {centre}, on {day}. Protocol: {protocol}, version {version}', { reader: study.reader, centre: study.centre, day: day(study.readOn), protocol: study.protocol, version: study.protocolVersion });
  return `**${study.title}:** ${read}${criteria}.`;
}

function amended(letter: Extract<LetterSnapshot, { kind: 'amended' }>, { t, day }: Telling): string[] {
  const { letterOf, why, serial } = letter.replaces;
  return [t(T.replaces, { day: day(letterOf) }), why, ...(serial ? [t(T.oldSerial, { serial })] : [])];
}

function rejected(letter: Extract<LetterSnapshot, { kind: 'films-rejected' }>, { t, dog, day }: Telling): LetterPart {
  const { centre, on, studies } = letter.rejected;
  const reasons = studies.map(({ title, reasons }) => `**${title}:** ${reasons.join('; ')}.`);
  return {
    heading: t(H.whatHappened),
    blocks: [
      paragraph(t('{centre} looked at the pictures on {day}. Some could not be used.', { centre, day: day(on) })),
      { kind: 'list', items: reasons },
      paragraph(t(T.rejected, dog)),
    ],
  };
}

function next(letter: LetterSnapshot, { t }: Telling, more: string[] = []): LetterPart {
  const list: LetterBlock[] = letter.nextSteps.length > 0 ? [{ kind: 'list', items: letter.nextSteps }] : [];
  return { heading: t(H.next), blocks: [...list, ...more.map(paragraph)] };
}

function sleep({ visit }: LetterSnapshot, { t, dog, day }: Telling): string[] {
  if (visit.rest === 'none') return [t(T.beforeSleep, dog)];
  return [t(visit.goingHomeSheet ? T.withSheet : T.withoutSheet, { ...dog, day: day(visit.date) }), t(T.sleepRisk, dog)];
}

function disagree({ disagree }: ResultSnapshot, { t, day }: Telling): string {
  const until = disagree.until ? t('You may ask for a second look until {day}.', { day: day(disagree.until) }) : t('You may ask for a second look.');
  const cost = disagree.cost ? [t('It costs {money}.', { money: disagree.cost })] : [];
  return [until, ...cost, disagree.how].join(' ');
}

const STATISTICS = { yes: T.statisticsYes, no: T.statisticsNo, withdrawn: T.statisticsWithdrawn } as const;

function whoSees({ whoSees }: LetterSnapshot, { t, day }: Telling): string[] {
  const others = whoSees.others.map((other) => t(', and {other}', { other })).join('');
  const { statistics } = whoSees;
  return [t(T.whoSees, { others }), ...(statistics ? [t(STATISTICS[statistics.answer], { day: day(statistics.on) })] : [])];
}

function questions({ contact }: LetterSnapshot): string {
  return `${contact.name}, ${contact.role}, **${contact.phone.replaceAll(' ', '\u00a0')}**, ${contact.hours}. ${contact.outOfHours}`;
}
