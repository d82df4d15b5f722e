import { countText, fleschKincaidGrade, readingAge, syllablesOf } from './readability.js';

describe('Flesch-Kincaid grade', () => {
  it('gives 11.264615 for 13 words, 24 syllables in one sentence', () => {
    // A published worked example, printed there as 11.3; the further digits are the formula's own.
    expect(fleschKincaidGrade({ words: 13, sentences: 1, syllables: 24 })).toBeCloseTo(11.264615, 6);
  });

  it('is turned into an age by adding 5 (common practice, no source)', () => {
    expect(readingAge(7)).toBe(12);
  });
});

describe('the syllable counter', () => {
  // Counted by hand.
  const counted = {
    1: ['dog', 'hips', 'moved', 'limped', 'whole', 'read', 'sleep', 'vet', 'lame', 'joints', 'weighs', 'the', 'she', 'does', 'told', 'grade', 'likes', 'tail'],
    2: ['table', 'people', 'pictures', 'sedated'.slice(2), 'breeding', 'wanted', 'socket', 'elbow', 'before', 'puppies', 'carried', 'safely', 'horses', 'quiet', 'going', 'parents', 'looser'],
    3: ['arthritis', 'adviser', 'sedated', 'computer', 'certainly', 'animal', 'medicine', 'reading-room', 'behaviour', 'everything'],
    4: ['information', 'certificate', 'veterinary'.slice(0, 8) + 'an', 'radiograph', 'operation'],
    5: ['anaesthesia', 'examination'],
  } as const;

  it.each(Object.entries(counted))('finds %s', (count, words) => {
    for (const word of words) {
      const found = word.split('-').reduce((sum, piece) => sum + syllablesOf(piece), 0);
      expect([word, found]).toEqual([word, Number(count)]);
    }
  });

  it('reads digits out one by one', () => {
    expect(syllablesOf('0.37')).toBe(5);
  });
});

describe('counting a text', () => {
  it('ends a sentence at a full stop and at the end of a block, not inside a number', () => {
    expect(countText(['It gives 0.38 now. All is well', 'No stairs'])).toMatchObject({ sentences: 3, words: 9 });
  });

  it('is not fooled by bold', () => {
    expect(countText(['**Call** us.'])).toEqual(countText(['Call us.']));
  });
});
