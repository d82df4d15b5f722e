import { formatTransponder, LARGEST_NATIONAL_ID, parseTransponder, transponderFromWord, transponderWord } from '#libs/science/identifiers/transponder';

// Layout: ISO 11784 as shown by ICAR: bit 1 animal flag, 17-26 country or maker, 27-64 national id.
it.each([
  ['999123456789012', 0x8000f9dcbe991a14n], // README of an R converter package (it writes 3E7.1CBE991A14); the word recomputed
  ['981000012345678', 0x8000f54000bc614en], // recomputed, as the rest
  ['276274877906943', 0x8000453fffffffffn],
  ['578077000123456', 0x80009091ed90a440n],
  ['900123000000001', 0x8000e11ca35f0e01n],
  ['752098100876543', 0x8000bc16d74494ffn],
])('%s and its 64-bit word', (digits, word) => {
  expect(transponderWord(parseTransponder(digits))).toBe(word);
  expect(transponderFromWord(word).digits).toBe(digits);
});

it('the R package’s hexadecimal form 3E7.1CBE991A14 holds the same code and id', () => {
  const { code, national } = parseTransponder('999123456789012');
  expect([Number(code).toString(16), national.toString(16)]).toEqual(['3e7', '1cbe991a14']);
});

it('38 bits hold 274,877,906,944 ids, 0 among them', () => {
  expect(LARGEST_NATIONAL_ID).toBe(2n ** 38n - 1n);
  expect(() => parseTransponder('276274877906944')).toThrow('Digit 15 is too large');
});

it('999 is for tests, 1 to 899 a country, 900 and up a maker', () => {
  // 1-899 and 900 and up: FAQ of an animal database; 999: README of an R converter package.
  expect(['999123456789012', '276098102345678', '899098102345678', '900123000000001', '972000000000001'].map((digits) => parseTransponder(digits).kind)).toEqual(['test', 'country', 'country', 'maker', 'maker']);
});

it('has 15 digits, kept as text, shown in threes', () => {
  expect(formatTransponder(parseTransponder('004000000000001'))).toBe('004 000 000 000 001');
  for (const wrong of ['27609810234567', '2760981023456789', '27609810234567A', '276000000000000']) expect(() => parseTransponder(wrong)).toThrow(/[Dd]igit/);
});
