import { exactLimits, normalLimits } from '#libs/science/agreement/control-limits';
import { binomialCdf, normalQuantile } from '#libs/science/distributions';

// Spiegelhalter, Stat Med 2005;24:1185-1202 (from memory); target .2, recomputed.
const z = (confidence: number) => -normalQuantile((1 - confidence) / 2);

it.each([
  [25, 0.0432029, 0.356797],
  [50, 0.0891277, 0.310872],
  [100, 0.121601, 0.278399],
  [400, 0.160801, 0.239199],
])('%i cases, 95 %%, normal: %f to %f', (n, lower, upper) => {
  expect(normalLimits(0.2, n, z(0.95))).toEqual({ lower: expect.closeTo(lower, 6), upper: expect.closeTo(upper, 6) });
});

it.each([
  [25, 0, 0.447219],
  [50, 0.0251901, 0.37481],
  [100, 0.0763907, 0.323609],
  [400, 0.138195, 0.261805],
])('%i cases, 99.8 %%, normal: %f to %f', (n, lower, upper) => {
  expect(normalLimits(0.2, n, z(0.998))).toEqual({ lower: expect.closeTo(lower, 6), upper: expect.closeTo(upper, 6) });
});

// The limits that the paper interpolates between whole cases, from our binomial distribution; the program uses whole cases.
it.each([
  [25, 0.0359516, 0.349582],
  [50, 0.0844048, 0.307094],
  [100, 0.119742, 0.276476],
  [400, 0.160272, 0.238694],
])('%i cases, 95 %%, exact: interpolated %f to %f, and whole cases not narrower', (n, lower, upper) => {
  const interpolated = (p: number) => {
    let k = 0;
    while (binomialCdf(k, n, 0.2) < p) k++;
    return (k - (binomialCdf(k, n, 0.2) - p) / (binomialCdf(k, n, 0.2) - binomialCdf(k - 1, n, 0.2))) / n;
  };
  expect([interpolated(0.025), interpolated(0.975)]).toEqual([expect.closeTo(lower, 6), expect.closeTo(upper, 6)]);
  const whole = exactLimits(0.2, n, z(0.95));
  expect(binomialCdf(Math.round(whole.lower * n) - 1, n, 0.2)).toBeLessThanOrEqual(0.025);
  expect(1 - binomialCdf(Math.round(whole.upper * n), n, 0.2)).toBeLessThanOrEqual(0.025);
});

it('16 of 50 against .2 lies 2.121320 standard deviations above', () => {
  expect(normalLimits(0.2, 50, 2.12132).upper).toBeCloseTo(16 / 50, 6);
});
