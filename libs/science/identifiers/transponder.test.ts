import fc from 'fast-check';
import { formatTransponder, LARGEST_NATIONAL_ID, parseTransponder, transponderFromWord, transponderWord } from './transponder.js';

describe('parseTransponder', () => {
  it.each([
    // Word of 999123456789012: README of an R converter package; the others recomputed from the bit layout of ISO 11784.
    ['999123456789012', 0x8000f9dcbe991a14n, 'test'],
    ['981000012345678', 0x8000f54000bc614en, 'maker'],
    ['276274877906943', 0x8000453fffffffffn, 'country'],
    ['578077000123456', 0x80009091ed90a440n, 'country'],
    ['900123000000001', 0x8000e11ca35f0e01n, 'maker'],
    ['752098100876543', 0x8000bc16d74494ffn, 'country'],
  ])('reads %s and its 64-bit word', (digits, word, kind) => {
    const transponder = parseTransponder(digits);
    expect(transponder).toMatchObject({ digits, kind });
    expect(transponderWord(transponder)).toBe(word);
    expect(transponderFromWord(word)).toEqual(transponder);
  });

  it('takes what a scanner or a person adds', () => {
    expect(parseTransponder(' 276-0981 0234.5678\r\n').digits).toBe('276098102345678');
    expect(parseTransponder('\uFEFF２７６098102345678').digits).toBe('276098102345678');
    expect(formatTransponder(parseTransponder('276098102345678'))).toBe('276 098 102 345 678');
    expect(parseTransponder('004000000000001').code).toBe('004');
  });

  it.each([
    ['276274877906944', 'TRANSPONDER_RANGE', /Digit 15 is too large/],
    ['276300000000000', 'TRANSPONDER_RANGE', /Digit 4 is too large/],
    ['27609810234567', 'TRANSPONDER_LENGTH', /has 14 \(1 missing\)/],
    ['2760981023456789', 'TRANSPONDER_LENGTH', /has 16 \(1 too many/],
    ['27609810234567O', 'TRANSPONDER_SIGN', /Digit 15 is "O"/],
    ['٢76098102345678', 'TRANSPONDER_SIGN', /Digit 1 is "٢"/],
    ['276000000000000', 'TRANSPONDER_RANGE', /all 0/],
    ['000098102345678', 'TRANSPONDER_CODE', /neither a country nor a maker/],
    ['', 'TRANSPONDER_LENGTH', /15 missing/],
  ])('refuses %s and says where', (text, code, words) => {
    expect(() => parseTransponder(text)).toThrow(expect.objectContaining({ code, message: expect.stringMatching(words) }));
  });

  it('refuses words that are not an animal’s', () => {
    expect(() => transponderFromWord(0x0000f54000bc614en)).toThrow(/not marked as an animal/);
    expect(() => transponderFromWord(1n << 64n)).toThrow(/64 bits/);
    expect(() => transponderFromWord((1n << 63n) | (1001n << 38n) | 1n)).toThrow(/at most 999/);
  });

  it('goes to the word and back for every number', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 999 }), fc.bigInt(1n, LARGEST_NATIONAL_ID), (code, national) => {
      const transponder = parseTransponder(`${String(code).padStart(3, '0')}${String(national).padStart(12, '0')}`);
      expect(transponderFromWord(transponderWord(transponder))).toEqual(transponder);
      expect(parseTransponder(formatTransponder(transponder))).toEqual(transponder);
    }));
  });
});
