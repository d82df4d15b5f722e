import fc from 'fast-check';
import { dogsIn, histogramOf } from './histogram.js';
import { type QuantileType, quantile } from './quantile.js';
import { placesOfQuantile, quantileInterval } from './quantile-interval.js';

const scale = { min: 0, max: 2, decimals: 2 };
const index = fc.integer({ min: 0, max: 200 }).map((steps) => steps / 100);
const group = fc.array(index, { minLength: 1, maxLength: 80 }).map((values) => histogramOf(scale, values));
const type = fc.constantFrom<QuantileType[]>(1, 2, 3, 4, 5, 6, 7, 8, 9);
const share = fc.double({ min: 0, max: 1, noNaN: true });

it('quantiles of every type rise with the share and stay within the group', () => {
  fc.assert(fc.property(group, type, share, share, (g, t, a, b) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)].map((p) => quantile(g, p, t).value);
    expect(low).toBeLessThanOrEqual(high! + 1e-12);
    expect(low).toBeGreaterThanOrEqual(quantile(g, 0).value - 1e-12);
    expect(high).toBeLessThanOrEqual(quantile(g, 1).value + 1e-12);
  }));
});

it('one dog, and dogs that are all alike, are their own quantiles', () => {
  fc.assert(fc.property(index, fc.integer({ min: 1, max: 30 }), type, share, (value, n, t, p) => {
    expect(quantile(histogramOf(scale, Array<number>(n).fill(value)), p, t).value).toBeCloseTo(value, 12);
  }));
});

it('says which definition it followed, 7 where none is asked for', () => {
  expect(quantile(histogramOf(scale, [0.1, 0.2]), 0.5)).toEqual({ value: expect.closeTo(0.15, 12), type: 7 });
});

it('the interval holds its quantile, and covers at least what was asked where it has both ends', () => {
  fc.assert(fc.property(group, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (g, p) => {
    const found = quantileInterval(g, p);
    const { value } = quantile(g, p);
    if (!found) return;
    expect(found.lower).toBeLessThanOrEqual(value + 1e-12);
    expect(found.upper).toBeGreaterThanOrEqual(value - 1e-12);
    expect(placesOfQuantile(dogsIn(g), p).coverage).toBeGreaterThanOrEqual(0.95);
  }));
});

// Invented indices; places 5 and 13 of 17, checked with R and scipy.
it('gives the values of the dogs at its places, and none at an end of few dogs', () => {
  const seventeen = histogramOf(scale, [0.21, 0.28, 0.33, 0.33, 0.37, 0.41, 0.41, 0.41, 0.46, 0.49, 0.52, 0.55, 0.58, 0.63, 0.7, 0.77, 0.85]);
  expect(quantileInterval(seventeen, 0.5)).toEqual({ lower: 0.37, upper: 0.58 });
  expect(quantileInterval(seventeen, 0.05)).toBeNull();
});

it('few dogs have no place for an end', () => {
  expect(placesOfQuantile(5, 0.5)).toEqual({ lower: null, upper: null, coverage: 1 });
  expect(placesOfQuantile(20, 0.99).upper).toBeNull();
});

it.each([[-0.1], [1.1], [NaN]])('a share of %f is refused', (p) => {
  expect(() => quantile(histogramOf(scale, [0.1]), p)).toThrow('is not a share');
  expect(() => placesOfQuantile(10, p)).toThrow('has no interval');
});

it('no dogs are refused', () => {
  expect(() => quantile(histogramOf(scale, []), 0.5)).toThrow('The group has no dogs yet');
  expect(() => placesOfQuantile(0, 0.5)).toThrow('0 dogs have no interval');
});
