import { wilson } from './wilson.js';

// Newcombe, Stat Med 1998;17:857-872, Table I, method 3, as printed to four decimals.
it.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
])('%i of %i: the interval printed in the published table', (k, n, lower, upper) => {
  expect(wilson(k, n).lower).toBeCloseTo(lower, 4);
  expect(wilson(k, n).upper).toBeCloseTo(upper, 4);
});

// Computed with two other programs from the same formula; nowhere printed.
it('a published count of deaths, 163 of 98,036: .142641 to .193795 per cent', () => {
  expect(wilson(163, 98_036).lower * 100).toBeCloseTo(0.142641, 6);
  expect(wilson(163, 98_036).upper * 100).toBeCloseTo(0.193795, 6);
});

it('all of n is the mirror of none of n', () => {
  expect(wilson(20, 20).lower).toBeCloseTo(1 - wilson(0, 20).upper, 12);
  expect(wilson(20, 20).upper).toBe(1);
});

it.each([[1, 0], [2, 1], [-1, 5], [0.5, 5]])('%d of %d is refused', (k, n) => {
  expect(() => wilson(k, n)).toThrow('is not a share');
});
