import { histogramOf } from '#libs/science/population/histogram';
import { type QuantileType, quantile } from '#libs/science/population/quantile';

const of = (values: number[], decimals: number) => histogramOf({ min: Math.floor(Math.min(...values)), max: Math.ceil(Math.max(...values)), decimals }, values);

// Definitions: Hyndman & Fan, Am Stat 1996;50:361-365.
describe('gauge readings of the NIST/SEMATECH e-Handbook, 7.2.6.2', () => {
  const gauge = of([95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199, 95.1682], 4);

  it('the 90th percentile of type 6 is printed there as 95.1981', () => {
    expect(quantile(gauge, 0.9, 6).value).toBeCloseTo(95.1981, 4);
  });

  // The others recomputed with R.
  it.each<[number, QuantileType, number]>([
    [0.1, 5, 95.08305], [0.1, 6, 95.07045], [0.1, 7, 95.0939], [0.1, 8, 95.07885],
    [0.25, 5, 95.113], [0.25, 6, 95.10975], [0.25, 7, 95.11625], [0.25, 8, 95.1119167],
    [0.5, 5, 95.1579], [0.5, 6, 95.1579], [0.5, 7, 95.1579], [0.5, 8, 95.1579],
    [0.9, 5, 95.19683], [0.9, 6, 95.19807], [0.9, 7, 95.19568], [0.9, 8, 95.1972433],
  ])('share %f, type %i: %f', (p, type, value) => {
    expect(quantile(gauge, p, type)).toEqual({ value: expect.closeTo(value, 6), type });
  });
});

// Type 7, recomputed with R.
it.each([
  ['1 to 10', Array.from({ length: 10 }, (_, i) => i + 1), 0, [0.05, 0.1, 0.25, 0.5, 0.9, 0.95], [1.45, 1.9, 3.25, 5.5, 9.1, 9.55]],
  ['five numbers', [15, 20, 35, 40, 50], 0, [0.05, 0.3, 0.4, 0.5, 1], [16, 23, 29, 35, 50]],
  ['17 invented indices', [0.21, 0.28, 0.33, 0.33, 0.37, 0.41, 0.41, 0.41, 0.46, 0.49, 0.52, 0.55, 0.58, 0.63, 0.7, 0.77, 0.85], 2, [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95], [0.266, 0.31, 0.37, 0.46, 0.58, 0.728, 0.786]],
])('%s', (_what, values, decimals, shares, expected) => {
  expect(shares.map((p) => quantile(of(values, decimals), p).value)).toEqual(expected.map((value) => expect.closeTo(value, 10)));
});
