import { lettersOf } from './answer-letters.js';

describe('the keys of answers', () => {
  it('are what they begin with, in each language', () => {
    expect(lettersOf(['Yes', 'No', 'Don’t know'])).toEqual(['Y', 'N', 'D']);
    expect(lettersOf(['Ja', 'Nein', 'Weiß ich nicht'])).toEqual(['J', 'N', 'W']);
  });

  it('are never the same for two of them', () => {
    expect(lettersOf(['Am Telefon', 'Auf Papier'])).toEqual(['A', 'U']);
    expect(lettersOf(['A', 'A'])).toEqual(['A', '']);
  });
});
