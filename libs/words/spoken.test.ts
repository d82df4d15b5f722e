import { languageAsked, speakInstead, speakingIn, t } from './spoken.js';

describe('what is said to whoever asked', () => {
  it('is English where nobody asked', () => {
    expect([t.language, t('Sealed')]).toEqual(['en', 'Sealed']);
  });

  it('is in their language, for as long as the answer takes', async () => {
    await speakingIn('de', async () => {
      await Promise.resolve();
      expect([t.language, t('Sealed'), t.known('Sealed'), t.said({ number: 0.4, decimals: 2, unit: '' })]).toEqual(['de', 'Versiegelt', 'Versiegelt', '0,40']);
    });
    expect(t.language).toBe('en');
  });

  it('changes once the person is known', () => {
    speakingIn('en', () => {
      speakInstead('de');
      expect(t('Sealed')).toBe('Versiegelt');
    });
  });

  it('is what the browser asks for first, of what there is', () => {
    expect(['de-CH, en;q=0.8', 'fr, de;q=0.9', 'fr', '*', undefined].map((header) => languageAsked(header))).toEqual(['de', 'de', 'en', 'en', 'en']);
  });

  it('is what was chosen there before all that it asks for, if there is such a language', () => {
    expect([languageAsked('en', 'de'), languageAsked('de', 'xx'), languageAsked('de', undefined)]).toEqual(['de', 'de', 'de']);
  });
});
