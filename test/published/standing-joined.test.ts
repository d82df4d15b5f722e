import { normalQuantile } from '#libs/science/distributions';
import { type Histogram, histogramOf, midRank } from '#libs/science/population/histogram';
import { joinedInterval } from '#libs/science/population/standing';
import { Z95, wilsonOfShare } from '#libs/science/population/wilson';

const scale = { min: 0, max: 2, decimals: 2 };
// Invented indices.
const groups: Record<string, Histogram> = {
  A: histogramOf(scale, [0.21, 0.28, 0.33, 0.33, 0.37, 0.41, 0.41, 0.41, 0.46, 0.49, 0.52, 0.55, 0.58, 0.63, 0.7, 0.77, 0.85]),
  B: histogramOf(scale, [0.18, 0.22, 0.25, 0.27, 0.29, 0.3, 0.31, 0.33, 0.34, 0.34, 0.36, 0.37, 0.38, 0.38, 0.39, 0.4, 0.41, 0.42, 0.42, 0.43, 0.44, 0.45, 0.45, 0.46, 0.47, 0.48, 0.49, 0.5, 0.51, 0.52, 0.54, 0.55, 0.57, 0.58, 0.6, 0.63, 0.66, 0.7, 0.76, 0.84]),
  C: histogramOf(scale, Array.from({ length: 120 }, (_, i) => Number((0.45 + 0.15 * normalQuantile((i + 0.5) / 120)).toFixed(2)))),
};

// The rule is ours; the values were recomputed in three ways: closed form, bisection, and R's prop.test. The lower end of 4 in 17 came
// out there as .0955496; with thirty digits Wilson's formula gives .09555044, which stands here.
// The standard errors are those of SD 0.15 (Arq Bras Med Vet Zootec 2020;72(4)) with ICC 0.94 and 0.85 (Smith et al. Am J Vet Res 1997;58:1076-1077).
it.each([
  ['A', 0.41, 0.0367423, 0.382353, 0.235294, 0.529412, 0.0955504, 0.738349, 0.194279, 0.613796],
  ['A', 0.46, 0.0580948, 0.5, 0.235294, 0.705882, 0.0955504, 0.8672, 0.285339, 0.714661],
  ['B', 0.41, 0.0367423, 0.4125, 0.2, 0.65, 0.105, 0.778655, 0.274245, 0.566089],
  ['B', 0.85, 0.0367423, 1, 0.975, 1, 0.871186, 1, 0.912378, 1],
  ['C', 0.46, 0.0580948, 0.529167, 0.241667, 0.8, 0.173858, 0.861755, 0.440346, 0.616178],
  ['C', 0.3, 0.025, 0.158333, 0.1, 0.241667, 0.058134, 0.325501, 0.10377, 0.234093],
  ['C', 0.05, 0.0367423, 0.00416667, 0, 0.0166667, 0, 0.058736, 0.000435, 0.038659],
])('group %s, value %f, standard error %f', (name, x, sem, mid, pLow, pHigh, lower, upper, sampleLower, sampleUpper) => {
  const group = groups[name]!;
  const n = group.counts.reduce((a, b) => a + b);
  expect(midRank(group, x)).toBeCloseTo(mid, 6);
  expect(midRank(group, x - Z95 * sem)).toBeCloseTo(pLow, 6);
  expect(midRank(group, x + Z95 * sem)).toBeCloseTo(pHigh, 6);
  expect(joinedInterval(group, x, sem)).toEqual({ lower: expect.closeTo(lower, 6), upper: expect.closeTo(upper, 6) });
  expect(wilsonOfShare(midRank(group, x), n)).toEqual({ lower: expect.closeTo(sampleLower, 6), upper: expect.closeTo(sampleUpper, 6) });
});

it('without a reading error it is the interval of the sample alone', () => {
  expect(joinedInterval(groups.B!, 0.41, 0)).toEqual(wilsonOfShare(0.4125, 40));
});
