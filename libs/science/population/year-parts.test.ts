import fc from 'fast-check';
import { yearParts } from './year-parts.js';

const born = (...years: [year: number, dogs: number][]) => years.flatMap(([bornYear, n]) => Array.from({ length: n }, () => ({ bornYear })));
const shape = (dogs: { bornYear: number }[]) => yearParts(dogs).map(({ from, to, dogs: own }) => [from, to, own.length]);

it('joins years until each part has twenty dogs', () => {
  expect(shape(born([2019, 12], [2020, 9], [2021, 25], [2022, 3]))).toEqual([[2019, 2020, 21], [2021, 2022, 28]]);
});

it('is empty where there would be one part only', () => expect(shape(born([2019, 12], [2020, 15]))).toEqual([]));

it('leaves no dog out and hides no part', () => {
  fc.assert(
    fc.property(fc.array(fc.record({ bornYear: fc.integer({ min: 2010, max: 2026 }) }), { maxLength: 200 }), (dogs) => {
      const parts = yearParts(dogs);
      expect(parts.reduce((sum, part) => sum + part.dogs.length, 0)).toBe(parts.length ? dogs.length : 0);
      expect(parts.every((part) => part.dogs.length >= 20)).toBe(true);
    }),
  );
});
