import { readFileSync, readdirSync } from 'node:fs';
import { letterParts } from '../letter-parts.js';
import { countText, fleschKincaidGrade, readingAge } from '../readability.js';
import { amendedLetter, correctionLetter, goingHome, rejectedLetter, resultLetter } from '../samples.js';
import { CERTIFICATE_TEXTS, CONSENT_TEXTS, GOING_HOME_TEXTS, LETTER_TEXTS, type DogWords } from './en.js';

const dog: DogWords = { name: 'Brannoch', names: 'Brannoch’s', he: 'he', him: 'him', his: 'his' };
const flat = (texts: (string | readonly string[])[]) => texts.flat();

const letterTexts = flat([
  LETTER_TEXTS.sides(dog), LETTER_TEXTS.allRead, LETTER_TEXTS.noBlame, LETTER_TEXTS.noFigure, LETTER_TEXTS.cannotTell(dog), LETTER_TEXTS.mattersToo(dog),
  LETTER_TEXTS.breeding, LETTER_TEXTS.seeVet(dog), LETTER_TEXTS.afterSleep(dog, { on: 'Monday', sheet: true }),
  LETTER_TEXTS.afterSleep(dog, { on: 'Monday', sheet: false }), LETTER_TEXTS.beforeSleep(dog), LETTER_TEXTS.whoSees(''),
  LETTER_TEXTS.statistics.yes('Monday'), LETTER_TEXTS.statistics.no('Monday'), LETTER_TEXTS.statistics.withdrawn('Monday'),
  LETTER_TEXTS.check('weirside.example/check', '7QK2-M9XD-VT4F'), LETTER_TEXTS.replaces('Monday'), LETTER_TEXTS.oldSerial('7QK2-M9XD-VT4F'),
  LETTER_TEXTS.corrects('Monday'), LETTER_TEXTS.rejected(dog), LETTER_TEXTS.again(dog),
]);
const goingHomeTexts = [
  GOING_HOME_TEXTS.normal, GOING_HOME_TEXTS.whatToDo, GOING_HOME_TEXTS.call(dog), GOING_HOME_TEXTS.worried, GOING_HOME_TEXTS.slept(dog, { from: '08:54', until: '09:40' }),
  GOING_HOME_TEXTS.reversed, GOING_HOME_TEXTS.woke, GOING_HOME_TEXTS.recovered(dog, '10:15'), GOING_HOME_TEXTS.tellVets(dog),
];
const ageOf = (texts: string[]) => readingAge(fleschKincaidGrade(countText(texts)));

function letterText(letter: Parameters<typeof letterParts>[0]): string[] {
  return letterParts(letter).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'list' ? block.items : block.kind === 'joints' ? [] : [block.text])),
  );
}

describe('reading age', () => {
  it('of the fixed words of the letter is 12 or under', () => expect(ageOf(letterTexts)).toBeLessThanOrEqual(12));
  it('of the fixed words of the going-home sheet is 12 or under', () => expect(ageOf(goingHomeTexts)).toBeLessThanOrEqual(12));
  it('of no single fixed sentence of the letter is above 15', () => {
    const hard = letterTexts.flatMap((text) => text.split(/(?<=[.!?]) /)).filter((sentence) => countText([sentence]).words > 6 && ageOf([sentence]) > 15);
    expect(hard).toEqual([]);
  });
  it.each([resultLetter, amendedLetter, correctionLetter, rejectedLetter])('of a whole letter ($kind) is 12 or under', (letter) => {
    expect(ageOf(letterText(letter))).toBeLessThanOrEqual(12);
  });
  it('of a whole going-home text is 12 or under', () => {
    expect(ageOf([goingHome.text.normal, ...goingHome.text.whatToDo.split('\n'), ...goingHome.text.callAtOnce.split('\n')])).toBeLessThanOrEqual(12);
  });
});

describe('words that never appear', () => {
  const NEVER = /\b(hip[- ]?scores?|totals?|pass(?:es|ed)?|fail(?:s|ed|ure)?|clear(?:ed)?|normal range|preliminary|traffic[- ]?light|out of 100|of 100)\b|\/\s?100\b|%/i;

  it('the check finds each of them', () => {
    for (const word of ['hip score', 'total', 'pass', 'fail', 'clear', 'normal range', 'preliminary', '38 / 100', '38%']) expect(word).toMatch(NEVER);
  });

  it('are in no text of a paper', () => {
    const fixed = [
      ...letterTexts, ...goingHomeTexts, ...Object.values(CONSENT_TEXTS), CERTIFICATE_TEXTS.caution, CERTIFICATE_TEXTS.limits(dog, 'both hips'),
      CERTIFICATE_TEXTS.check('weirside.example/check'), ...[resultLetter, amendedLetter, correctionLetter, rejectedLetter].flatMap(letterText),
    ];
    expect(fixed.filter((text) => NEVER.test(text))).toEqual([]);
  });

  it('are in no words written into the papers’ own code', () => {
    const folder = new URL('../', import.meta.url);
    const sources = readdirSync(folder).filter((file) => file.endsWith('.ts') && !file.includes('.test.'));
    expect(sources.length).toBeGreaterThan(10);
    for (const file of sources) {
      const strings = readFileSync(new URL(file, folder), 'utf8').match(/'[^'\n]*'|`[^`]*`/g) ?? [];
      expect([file, strings.filter((text) => NEVER.test(text))]).toEqual([file, []]);
    }
  });
});
