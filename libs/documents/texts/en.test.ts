import { readFileSync, readdirSync } from 'node:fs';
import { letterParts } from '../letter-parts.js';
import { countText, fleschKincaidGrade, readingAge } from '../readability.js';
import { amendedLetter, correctionLetter, fewLetter, goingHome, placedLetter, rejectedLetter, resultLetter } from '../samples.js';
import { noStanding } from '#libs/contracts/standing';
import { standingWords } from './standing.js';
import { wordsOnPaper } from '#libs/words/words';
import type { DogWords } from '../dog-words.js';
import { CERTIFICATE_TEXTS, CONSENT_TEXTS, GOING_HOME_TEXTS, LETTER_TEXTS } from './en.js';

const dog: DogWords = { name: 'Brannoch', names: 'Brannoch’s', he: 'he', him: 'him', his: 'his' };
const t = wordsOnPaper('en');
const filled = { ...dog, day: 'Monday', others: '', source: 'Smith et al. 1997', address: 'weirside.example/check', serial: '7QK2-M9XD-VT4F', from: '08:54', until: '09:40', at: '10:15' };

const letterTexts = [
  ...Object.values(LETTER_TEXTS).map((text) => t(text, filled)),
  ...noStanding.map((why) => standingWords({ kind: 'none', why, region: 'hip', n: 13 }, dog).lead),
];
const goingHomeTexts = Object.values(GOING_HOME_TEXTS).map((text) => t(text, filled));
const ageOf = (texts: string[]) => readingAge(fleschKincaidGrade(countText(texts)));

function letterText(letter: Parameters<typeof letterParts>[0]): string[] {
  return letterParts(letter).flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'list' ? block.items : block.kind === 'joints' || block.kind === 'twenty' ? [] : [block.text])),
  );
}

describe('reading age', () => {
  it('of the fixed words of the letter is 12 or under', () => expect(ageOf(letterTexts)).toBeLessThanOrEqual(12));
  it('of the fixed words of the going-home sheet is 12 or under', () => expect(ageOf(goingHomeTexts)).toBeLessThanOrEqual(12));
  it('of no single fixed sentence of the letter is above 15', () => {
    const hard = letterTexts.flatMap((text) => text.split(/(?<=[.!?]) /)).filter((sentence) => countText([sentence]).words > 6 && ageOf([sentence]) > 15);
    expect(hard).toEqual([]);
  });
  it.each([resultLetter, placedLetter, fewLetter, amendedLetter, correctionLetter, rejectedLetter])('of a whole letter ($kind) is 12 or under', (letter) => {
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
      ...letterTexts, ...goingHomeTexts, ...Object.values(CONSENT_TEXTS), ...Object.values(CERTIFICATE_TEXTS).map((text) => t(text, { ...filled, joints: 'both hips' })),
      ...[resultLetter, placedLetter, fewLetter, amendedLetter, correctionLetter, rejectedLetter].flatMap(letterText),
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
