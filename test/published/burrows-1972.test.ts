import { intensity, intensityOf } from '#libs/science/selection/intensity';

// Exact: means of expected normal order statistics, recomputed. Beside them the approximation of
// Burrows, Biometrics 1972;28:1091-1100 (formula from memory): i − (n − s) / (2·s·(n + 1)·i).
it.each([
  [5, 1, 1.162964, 1.161682],
  [10, 1, 1.538753, 1.521881],
  [10, 2, 1.270055, 1.269922],
  [10, 5, 0.73892, 0.740916],
  [20, 1, 1.867475, 1.843399],
  [20, 2, 1.63754, 1.632882],
  [20, 4, 1.331752, 1.331773],
  [20, 5, 1.214478, 1.214912],
  [20, 10, 0.767491, 0.768044],
  [50, 10, 1.371783, 1.371795],
  [100, 10, 1.729791, 1.729596],
])('of %i the best %i: exact %f, approximated %f', (n, s, exact, approximated) => {
  expect(intensityOf(s, n)).toBeCloseTo(exact, 6);
  const { i } = intensity(s / n);
  expect(i - (n - s) / (2 * s * (n + 1) * i)).toBeCloseTo(approximated, 6);
});
