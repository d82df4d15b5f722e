import type { Hold } from './evaluation.js';
import { holdTable } from './hold-table.js';
import type { HoldCode } from './hold-codes.js';
import { holdPhrases } from './hold-words-table.js';
import { wordsIn } from '#libs/words/words';
import { holdWords, ownersSentence } from './words.js';

const hold = (code: HoldCode, more: Partial<Hold> = {}): Hold => ({
  code, on: { scope: 'visit', id: 'v' }, who: [...holdTable[code].who], forbids: [], ways: [], ...more,
});

describe('a hold in words', () => {
  it('says what is missing, who supplies it and by when', () => {
    expect(holdWords(hold('CONSENT_SEDATION_MISSING', { by: '2026-11-27' }), { names: { owner: 'Hanne Birk' } })).toEqual({
      title: 'Consent to sedation missing',
      rest: 'Hanne Birk signs by link, or here. By Friday 27 November.',
    });
  });

  it('says to the owner, in the owner’s language, what is the owner’s to see', () => {
    const [asked, room] = [hold('BEFORE_THE_DAY', { until: '2026-11-27' }), hold('ROOM_PEOPLE_MISSING')];
    expect(ownersSentence(asked, {}, wordsIn('en'))).toBe('Your visit is on Friday 27 November.');
    expect(ownersSentence(asked, {}, wordsIn('de'))).toBe('Ihr Termin ist am Freitag, 27. November.');
    expect(ownersSentence(room, {}, wordsIn('de'))).toBeNull();
  });

  it('gives the day from which a young dog is old enough', () => {
    const young = hold('TOO_YOUNG', { until: '2026-11-26', detail: { earliestDate: '2026-11-26', daysShort: 1 } });
    expect(holdWords(young).rest).toBe('Old enough from Thursday 26 November, one day later; the desk moves the visit.');
  });

  it('writes minutes as local time', () => {
    const due = hold('READING_DUE', { by: '2026-11-25T09:28:00.000Z', detail: { minutes: 6 } });
    expect(holdWords(due, { zone: 'Europe/Vienna' }).rest).toBe('Last reading 6 min ago; a nurse takes one. Due 10:28.');
  });

  it.each(Object.keys(holdPhrases) as HoldCode[])('has a short title without blame for %s', (code) => {
    const { title } = holdPhrases[code];
    expect(title.split(' ').length).toBeLessThanOrEqual(6);
    expect(`${title} ${holdPhrases[code].how}`).not.toMatch(/pending|action required|error|fault|\b(pass|fail|clear|total)/i);
  });

  it.each(Object.keys(holdPhrases) as HoldCode[])('leaves no braces and no code for %s', (code) => {
    const words = holdWords(hold(code));
    const told = (['en', 'de'] as const).map((language) => ownersSentence(hold(code), {}, wordsIn(language)) ?? '');
    expect([words.title, words.rest, ...told].join(' ')).not.toMatch(/[{}]|undefined|[A-Z]_[A-Z]/);
  });
});
