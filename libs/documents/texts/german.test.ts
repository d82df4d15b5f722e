import { noStanding } from '#libs/contracts/standing';
import { wordsOnPaper } from '#libs/words/words';
import { dosesIn } from '../doses.js';
import { letterParts } from '../letter-parts.js';
import { renderLetter } from '../letter.js';
import { countGerman, germanSyllables, wienerSachtext } from '../readability-german.js';
import { fewLetter, placedLetter, resultLetter } from '../samples.js';
import { readPdf } from '#test/support/read-pdf';
import { GOING_HOME_TEXTS, LETTER_HEADINGS, LETTER_TEXTS } from './en.js';
import { standingWords } from './standing.js';

const t = wordsOnPaper('de');
const dog = { name: 'Brannoch', names: 'Brannoch’s', he: 'he', him: 'him', his: 'his' };
const filled = { ...dog, day: 'Montag', others: '', source: 'Smith et al. 1997', address: 'weirside.example/check', serial: '7QK2-M9XD-VT4F', from: '08:54', until: '09:40', at: '10:15' };
const letterTexts = [...Object.values(LETTER_TEXTS).map((text) => t(text, filled)), ...noStanding.map((why) => standingWords({ kind: 'none', why, region: 'hip', n: 13 }, dog, t).lead)];
const goingHomeTexts = Object.values(GOING_HOME_TEXTS).map((text) => t(text, filled));
const schoolYear = (texts: readonly string[]) => wienerSachtext(countGerman(texts));

describe('the measure for German', () => {
  it('is the published formula', () => {
    // 100 words in 10 sentences, 20 of them long: 0.2744 × 20 + 0.2656 × 10 − 1.693, by hand.
    expect(wienerSachtext({ words: 100, sentences: 10, longWords: 20 })).toBeCloseTo(6.451, 6);
  });

  it('counts syllables as they are spoken', () => {
    // Counted by hand.
    const counted = { 1: ['Hund', 'Bild', 'liegt'], 2: ['Hüfte', 'heute', 'Praxis', 'gequält'], 3: ['Ellbogen', 'untersucht', 'Arthrose'], 4: ['Beurteilung', 'Untersuchung'] };
    for (const [count, words] of Object.entries(counted)) for (const word of words) expect([word, germanSyllables(word)]).toEqual([word, Number(count)]);
  });
});

describe('the German papers', () => {
  // A pupil of the seventh year is as old as the reading age that the English is held at.
  it('are as easy to read as the English ones', () => {
    expect(schoolYear(letterTexts)).toBeLessThanOrEqual(7);
    expect(schoolYear(goingHomeTexts)).toBeLessThanOrEqual(7);
  });

  it('never say what a screening does not tell', () => {
    const never = /\b(bestanden|durchgefallen|unbedenklich|vorläufig\w*|Ampel|Gesamt(wert|note|punkt\w*)|Normalbereich|\d+\s?%)\b|\/\s?100\b/iu;
    for (const word of ['bestanden', 'vorläufiges', 'Gesamtnote', '38 %', '38/100']) expect(`x ${word} x`).toMatch(/%/.test(word) ? /%/ : never);
    expect([...letterTexts, ...goingHomeTexts].filter((text) => never.test(text) || text.includes('%'))).toEqual([]);
  });

  it('name no dose, in German either', () => {
    expect(dosesIn('Geben Sie eine halbe Tablette, dann 3 Tropfen.')).toHaveLength(2);
    expect(dosesIn('Keine eigenen Tabletten. Rufen Sie nach 20:00 Uhr 0470 21 00 an.')).toEqual([]);
  });

  it('have every topic of the English letter, in its order, and say their language in the file', async () => {
    for (const letter of [resultLetter, placedLetter, fewLetter]) {
      const [english, german] = [letterParts(letter), letterParts({ ...letter, lang: 'de' })];
      expect(german.map((part) => part.heading)).toEqual(english.map((part) => t(part.heading as (typeof LETTER_HEADINGS)['check'])));
      expect(german.map((part) => part.blocks.map((block) => block.kind))).toEqual(english.map((part) => part.blocks.map((block) => block.kind)));
    }
    const pdf = await readPdf(await renderLetter({ ...placedLetter, lang: 'de' }));
    expect(pdf).toMatchObject({ lang: 'de', title: 'Hüften von Brannoch' });
    expect(pdf.text).toContain('24. November 2026');
    expect(pdf.text).toContain('7 bis 13 von je 20');
  });

  it('come out in the same bytes every time', async () => {
    const german = { ...placedLetter, lang: 'de' as const };
    expect((await renderLetter(german)).equals(await renderLetter(german))).toBe(true);
  });
});
