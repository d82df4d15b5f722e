import fc from 'fast-check';
import { wilson, wilsonOfShare } from './wilson.js';

// Values of published tables: test/published/newcombe-1998.test.ts.
it('never leaves 0 to 1, holds its share, and is narrower with more dogs', () => {
  fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 1, max: 10_000_000 }), (share, n) => {
    const { lower, upper } = wilsonOfShare(share, n);
    expect(0 <= lower && lower <= share && share <= upper && upper <= 1).toBe(true);
    const more = wilsonOfShare(share, 2 * n);
    expect(more.upper - more.lower).toBeLessThanOrEqual(upper - lower + 1e-12);
  }));
});

it('all of n is the mirror of none of n', () => {
  expect(wilson(20, 20).lower).toBeCloseTo(1 - wilson(0, 20).upper, 12);
  expect(wilson(20, 20).upper).toBe(1);
});

it.each([[1, 0], [2, 1], [-1, 5], [0.5, 5], [NaN, 5]])('%d of %d is refused', (k, n) => {
  expect(() => wilson(k, n)).toThrow('is not a share');
});

it.each([[-0.1, 5], [1.1, 5], [NaN, 5], [0.5, 0], [0.5, 1.5]])('a share of %d among %d is refused', (share, n) => {
  expect(() => wilsonOfShare(share, n)).toThrow('is not a share');
});
