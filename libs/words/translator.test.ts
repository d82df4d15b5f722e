import { longDay, shortDay } from './days.js';
import { asLanguage } from './languages.js';
import { inEnglish, said } from './said.js';
import { wordsIn, wordsOnPaper } from './words.js';

const [english, german] = [wordsIn('en'), wordsIn('de')];

describe('a sentence', () => {
  it('is said in the language, with what stands in its places', () => {
    expect(english('{dog}: a correction', { dog: 'Tolle' })).toBe('Tolle: a correction');
    expect(german('{dog}: a correction', { dog: 'Tolle' })).toBe('Tolle: eine Berichtigung');
  });

  it('closes off a name that runs from right to left, and leaves every other byte alone', () => {
    expect(german('{dog}: a correction', { dog: 'רקס' })).toBe('\u2068רקס\u2069: eine Berichtigung');
    expect(wordsOnPaper('de')('{dog}: a correction', { dog: 'רקס' })).toBe('רקס: eine Berichtigung');
  });

  it('chooses the form that a number asks for', () => {
    const count = '{count} dogs: visit on {day}';
    expect([1, 3].map((n) => german(count, { count: n, day: 'Montag' }))).toEqual(['1 Hund: Termin am Montag', '3 Hunde: Termin am Montag']);
  });

  it('of a practice or a scheme stays as it was written, braces and all', () => {
    expect(german.known('Our own {study}')).toBe('Our own {study}');
    expect(german.known('Hips, laxity')).toBe('Hüften, Lockerheit');
  });
});

describe('what a part without a language says', () => {
  const result = said('{value} ({side}, {worse})', { value: { number: 0.4, decimals: 2, unit: '' }, side: 'right', worse: said('the looser hip') });

  it('is English by itself, and any other language through its words', () => {
    expect(inEnglish(result)).toBe('0.40 (right, the looser hip)');
    expect(english.said(result)).toBe(inEnglish(result));
    expect(german.said(result)).toBe('0,40 (rechts, die lockerere Hüfte)');
  });
});

describe('days', () => {
  it('are written as the language writes them', () => {
    expect([longDay('en', '2026-11-25'), longDay('de', '2026-11-25')]).toEqual(['Wednesday, 25 November 2026', 'Mittwoch, 25. November 2026']);
    expect([shortDay('en', '2026-11-25'), shortDay('de', '2026-11-25')]).toEqual(['25 November 2026', '25. November 2026']);
  });
});

it('a language that nobody has translated yet is answered in English', () => {
  expect([asLanguage('de'), asLanguage('fr'), asLanguage(null), asLanguage('constructor')]).toEqual(['de', 'en', 'en', 'en']);
});
