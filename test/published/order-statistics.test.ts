import { placesOfQuantile } from '#libs/science/population/quantile-interval';

// P(X(l) ≤ q < X(u)) as a sum of binomial probabilities; recomputed with R and scipy, nowhere printed.
it.each([
  [10, 0.5, 0.95, 2, 9, 0.978516],
  [17, 0.5, 0.95, 5, 13, 0.950958],
  [20, 0.5, 0.95, 6, 15, 0.958611],
  [50, 0.5, 0.95, 18, 33, 0.967161],
  [100, 0.5, 0.95, 40, 61, 0.9648],
  [120, 0.5, 0.95, 49, 72, 0.964676],
  [200, 0.5, 0.95, 86, 115, 0.959963],
  [100, 0.9, 0.95, 84, 96, 0.95569],
  [120, 0.025, 0.9, 1, 7, 0.920467],
])('%i dogs, share %f, confidence %f: places %i and %i hold it in %f', (n, p, confidence, lower, upper, coverage) => {
  expect(placesOfQuantile(n, p, confidence)).toEqual({ lower, upper, coverage: expect.closeTo(coverage, 6) });
});

it('59 is the least number of dogs of which the highest lies above the 95th percentile in 95 of 100', () => {
  expect(1 - 0.95 ** 58).toBeLessThan(0.95);
  // With both tails at 5 % the upper limit is the last dog from 59 on.
  expect(placesOfQuantile(58, 0.95, 0.9).upper).toBeNull();
  expect(placesOfQuantile(59, 0.95, 0.9).upper).toBe(59);
});
