import type { LetterSnapshot, StudyOnPaper } from './snapshots.js';
import { LETTER_HEADINGS as H, LETTER_TEXTS as T, type DogWords } from './texts/en.js';
import { foundBlocks, howSureBlocks, notReadBlocks } from './letter-findings.js';
import { paragraph, type LetterBlock, type LetterPart, type ResultSnapshot } from './letter-blocks.js';
import { ageWords, birthWords, capital, dayWords, listWords, pronouns, transponderWords } from './words.js';

const part = (heading: string, texts: readonly string[]): LetterPart => ({ heading, blocks: texts.map(paragraph) });

export function dogWords(snapshot: Pick<LetterSnapshot, 'dog'>): DogWords {
  const { callName, sex } = snapshot.dog;
  return { name: callName, names: `${callName}’s`, ...pronouns(sex) };
}

export function letterTitle(letter: LetterSnapshot): string {
  const { names } = dogWords(letter);
  if (letter.kind === 'correction') return `A correction about ${letter.dog.callName}`;
  if (letter.kind === 'films-rejected') return `${names} pictures need another try`;
  const joints = new Set(letter.studies.flatMap((study) => study.joints.map(({ joint }) => `${joint}s`)));
  return `${names} ${listWords([...joints].sort().reverse())}`;
}

/** The letter's topics in their fixed order; the same parts make the mail's text. */
export function letterParts(letter: LetterSnapshot): LetterPart[] {
  const dog = dogWords(letter);
  const opening = [part(H.whichDog, [whichDog(letter)])];
  const closing = [
    part(H.whoSees, whoSees(letter)),
    ...('check' in letter && letter.check ? [part(H.check, [T.check(letter.check.address, letter.check.serial)])] : []),
    part(H.questions, [questions(letter)]),
  ];
  const care = [part(H.seeVet, T.seeVet(dog)), part(H.afterSleep, sleep(letter, dog))];

  if (letter.kind === 'correction') {
    const { letterOf, wrong, holds, serial } = letter.corrects;
    const texts = [T.corrects(dayWords(letterOf)), wrong, ...(serial ? [T.oldSerial(serial)] : []), `**${holds}**`];
    return [...opening, part(H.whatWasWrong, texts), next(letter), ...care, ...closing];
  }
  if (letter.kind === 'films-rejected') {
    return [...opening, part(H.whatWasDone, [taken(letter, dog)]), rejected(letter, dog), next(letter, [letter.cost, T.again(dog)]), ...care, ...closing];
  }
  return [
    ...(letter.kind === 'amended' ? [part(H.whyNew, amended(letter))] : []),
    ...opening,
    part(H.whatWasDone, [taken(letter, dog), ...letter.studies.map(readBy)]),
    { heading: H.whatWasFound, blocks: foundBlocks(letter.studies, dog) },
    { heading: H.notRead, blocks: notReadBlocks(letter) },
    { heading: H.howSure, blocks: howSureBlocks(letter.studies, dog) },
    part(H.cannotTell, T.cannotTell(dog)),
    part(H.mattersToo, T.mattersToo(dog)),
    part(H.breeding, T.breeding),
    next(letter),
    ...care,
    part(H.disagree, [disagree(letter)]),
    ...closing,
  ];
}

function whichDog({ dog, visit }: LetterSnapshot): string {
  const names = [dog.callName, ...(dog.registeredName && dog.registeredName !== dog.callName ? [dog.registeredName] : [])];
  const kind = [dog.breed, ...(dog.sex === 'unknown' ? [] : [dog.sex]), `born ${birthWords(dog.birth)}`];
  const transponder = dog.transponder ? `Transponder ${transponderWords(dog.transponder)}.` : `No transponder.`;
  const pictures = `Pictures taken on ${dayWords(visit.date)} at ${visit.place}, at ${ageWords(dog.birth, visit.date)}.`;
  return `**${names.join(', ')}.** ${capital(kind.join(', '))}. ${transponder} ${pictures} ${visit.askedBy}`;
}

function taken({ visit }: LetterSnapshot, dog: DogWords): string {
  const rest = {
    sedation: `${dog.name} slept with medicine`,
    anaesthesia: `${dog.name} was under anaesthesia`,
    none: `${dog.name} stayed awake`,
  }[visit.rest];
  const count = visit.exposures === 1 ? 'one picture was' : `${visit.exposures} pictures were`;
  const sent = visit.allSent ? ' All of them went to the reader.' : ' Not all of them went to the reader.';
  return `${rest} while ${count} taken.${sent}`;
}

function readBy(study: StudyOnPaper): string {
  const criteria = study.criteria ? `, ${study.criteria}` : '';
  return `**${study.title}:** read by ${study.reader}, ${study.centre}, on ${dayWords(study.readOn)}. Protocol: ${study.protocol}, version ${study.protocolVersion}${criteria}.`;
}

function amended(letter: Extract<LetterSnapshot, { kind: 'amended' }>): string[] {
  const { letterOf, why, serial } = letter.replaces;
  return [T.replaces(dayWords(letterOf)), why, ...(serial ? [T.oldSerial(serial)] : [])];
}

function rejected(letter: Extract<LetterSnapshot, { kind: 'films-rejected' }>, dog: DogWords): LetterPart {
  const { centre, on, studies } = letter.rejected;
  const reasons = studies.map(({ title, reasons }) => `**${title}:** ${reasons.join('; ')}.`);
  return {
    heading: H.whatHappened,
    blocks: [
      paragraph(`${centre} looked at the pictures on ${dayWords(on)}. Some could not be used.`),
      { kind: 'list', items: reasons },
      paragraph(T.rejected(dog)),
    ],
  };
}

function next(letter: LetterSnapshot, more: string[] = []): LetterPart {
  const list: LetterBlock[] = letter.nextSteps.length > 0 ? [{ kind: 'list', items: letter.nextSteps }] : [];
  return { heading: H.next, blocks: [...list, ...more.map(paragraph)] };
}

function sleep({ visit }: LetterSnapshot, dog: DogWords): string[] {
  if (visit.rest === 'none') return T.beforeSleep(dog);
  return T.afterSleep(dog, { on: dayWords(visit.date), sheet: visit.goingHomeSheet });
}

function disagree({ disagree }: ResultSnapshot): string {
  const until = disagree.until ? `You may ask for a second look until ${dayWords(disagree.until)}.` : 'You may ask for a second look.';
  const cost = disagree.cost ? ` It costs ${disagree.cost}.` : '';
  return `${until}${cost} ${disagree.how}`;
}

function whoSees({ whoSees }: LetterSnapshot): string[] {
  const others = whoSees.others.map((other) => `, and ${other}`).join('');
  const { statistics } = whoSees;
  return [T.whoSees(others), ...(statistics ? [T.statistics[statistics.answer](dayWords(statistics.on))] : [])];
}

function questions({ contact }: LetterSnapshot): string {
  return `${contact.name}, ${contact.role}, **${contact.phone.replaceAll(' ', '\u00a0')}**, ${contact.hours}. ${contact.outOfHours}`;
}
