import fc from 'fast-check';
import { add, dogsIn, emptyHistogram, histogramOf, midRank, rankOf } from './histogram.js';

const scale = { min: 0, max: 2, decimals: 2 };
const index = fc.integer({ min: 0, max: 200 }).map((steps) => steps / 100);
const indices = fc.array(index, { maxLength: 60 });

describe('counting', () => {
  it('is the same in any order, and dog by dog', () => {
    fc.assert(fc.property(indices, (values) => {
      const oneByOne = [...values].reverse().reduce((group, value) => add(group, value), emptyHistogram(scale));
      expect(oneByOne).toEqual(histogramOf(scale, values));
    }));
  });

  it('does not change what it was given', () => {
    const before = emptyHistogram(scale);
    add(before, 0.4);
    expect(dogsIn(before)).toBe(0);
  });

  it('counts a value that carries an error of binary fractions', () => {
    expect(dogsIn(histogramOf(scale, [0.1 + 0.2, 0.57, 1.15, 1.1]))).toBe(4);
    expect(rankOf(histogramOf(scale, [0.1 + 0.2]), 0.3).equal).toBe(1);
  });
});

describe('ranks', () => {
  it('agree with counting the dogs themselves', () => {
    fc.assert(fc.property(fc.array(index, { minLength: 1, maxLength: 60 }), index, (values, x) => {
      const below = values.filter((v) => v < x).length;
      const equal = values.filter((v) => v === x).length;
      expect(rankOf(histogramOf(scale, values), x)).toEqual({ below, equal, n: values.length });
      expect(midRank(histogramOf(scale, values), x)).toBeCloseTo((below + equal / 2) / values.length, 12);
    }));
  });

  it('mirror: what is tighter and what is looser add up to all', () => {
    fc.assert(fc.property(fc.array(index, { minLength: 1 }), index, (values, x) => {
      const mirrored = values.map((v) => Number((2 - v).toFixed(2)));
      expect(midRank(histogramOf(scale, values), x) + midRank(histogramOf(scale, mirrored), 2 - x)).toBeCloseTo(1, 12);
    }));
  });

  it('with all dogs alike the one value stands in the middle', () => {
    expect(midRank(histogramOf(scale, Array<number>(30).fill(0.4)), 0.4)).toBe(0.5);
  });

  it('lie at 0 and 1 off the scale', () => {
    const group = histogramOf(scale, [0, 1, 2]);
    expect([midRank(group, -0.5), midRank(group, 2.5)]).toEqual([0, 1]);
  });
});

describe('is refused, with the reason', () => {
  it.each([
    [NaN, 'NaN is not a number with 2 decimals'],
    [Infinity, 'Infinity is not a number with 2 decimals'],
    [0.405, '0.405 is not a number with 2 decimals'],
    [-0.01, '-0.01 lies outside 0 to 2'],
    [2.01, '2.01 lies outside 0 to 2'],
  ])('a value of %f', (value, message) => {
    expect(() => add(emptyHistogram(scale), value)).toThrow(message);
    expect(() => histogramOf(scale, [value])).toThrow(message);
  });

  it('parts of dogs, less than none', () => {
    expect(() => add(emptyHistogram(scale), 0.4, 0.5)).toThrow('0.5 is not a number of dogs');
    expect(() => add(emptyHistogram(scale), 0.4, -1)).toThrow('-1 is not a number of dogs');
  });

  it.each([[{ min: 1, max: 0, decimals: 2 }], [{ min: 0, max: 1, decimals: 7 }], [{ min: 0, max: NaN, decimals: 2 }], [{ min: 0, max: 1e9, decimals: 2 }], [{ min: 0, max: 1, decimals: 0.5 }]])('%j as a scale', (bad) => {
    expect(() => emptyHistogram(bad)).toThrow('is no scale to count on');
  });

  it('a place in no dogs', () => {
    expect(() => midRank(emptyHistogram(scale), 0.4)).toThrow('The group has no dogs yet');
  });
});
