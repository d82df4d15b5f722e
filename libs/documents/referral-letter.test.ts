import { readPdf } from '#test/support/read-pdf';
import { textOnText } from '#test/support/text-on-text';
import { renderReferralLetter } from './referral-letter.js';
import { referralLetter, ueberweisung } from './samples-german.js';

describe('the letter to a colleague', () => {
  it('says which dog, which pictures, until when, and that nothing is prescribed', async () => {
    const { text, lang } = await readPdf(await renderReferralLetter(referralLetter));
    expect(lang).toBe('en');
    for (const words of ['Please take these pictures of Tarn', 'born between 1 January 2024 and 31 March 2024, no transponder', 'by 1 December 2026', 'Elbow grading, version 2', 'Every film goes to the reading centre', 'Any medicine, drops or tablets now? not known', 'Nothing is prescribed here', 'page 1 of 1']) expect(text).toContain(words);
  });

  it('says the same in German', async () => {
    const { text, lang, title } = await readPdf(await renderReferralLetter(ueberweisung));
    expect([lang, title]).toEqual(['de', 'Überweisung von Tarn']);
    for (const words of ['Bitte machen Sie diese Bilder von Tarn', 'Hündin, geboren: 1. Januar 2024 bis 31. März 2024, kein Transponder', 'bis 1. Dezember 2026', 'Beurteilung der Ellbogen, Version 2', 'Alle Bilder gehen an: die Auswertungsstelle', 'Tabletten? nicht bekannt', 'Hier wird nichts verordnet', 'Seite 1 von 1']) expect(text).toContain(words);
    expect(text).not.toMatch(/\b(and|with|version|Order|Questions)\b/);
  });

  it.each([referralLetter, ueberweisung])('has words beside words and none over others ($lang)', async (letter) => {
    expect(await textOnText(await renderReferralLetter(letter))).toEqual([]);
    expect(await textOnText(await renderReferralLetter({ ...letter, paper: 'LETTER', health: Array.from({ length: 6 }, () => letter.health).flat() }))).toEqual([]);
  });

  it('comes out in the same bytes every time', async () => {
    expect((await renderReferralLetter(ueberweisung)).equals(await renderReferralLetter(ueberweisung))).toBe(true);
  });
});
