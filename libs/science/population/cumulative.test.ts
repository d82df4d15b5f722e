import { cumulative } from './cumulative.js';
import { histogramOf } from './histogram.js';

it('rises by the dogs at each value, to all of them', () => {
  const curve = cumulative(histogramOf({ min: 0, max: 1, decimals: 1 }, [0.2, 0.2, 0.5, 0.9]));
  expect(curve.map(({ value, share }) => [value, share])).toEqual([[0.2, 0.5], [0.5, 0.75], [0.9, 1]]);
});

// Newcombe, Stat Med 1998;17:857-872, Table I: 81 of 263 is .2553 to .3662.
it('has the interval of a share at each value', () => {
  const [first] = cumulative(histogramOf({ min: 0, max: 1, decimals: 0 }, [...Array<number>(81).fill(0), ...Array<number>(182).fill(1)]));
  expect(first!.lower).toBeCloseTo(0.2553, 4);
  expect(first!.upper).toBeCloseTo(0.3662, 4);
});

it('is empty for a group without dogs', () => expect(cumulative(histogramOf({ min: 0, max: 1, decimals: 1 }, []))).toEqual([]));
