import { pChart } from '#libs/science/agreement/control-limits';

// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2: 30 wafers of 50 sites, mean .2313 printed there. The counts are those of
// Montgomery's cans (R's qcc, orangejuice); that the wafers are the same counts is from memory, the mean agrees. Limits recomputed.
const counts = [12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6];
const units = counts.map((cases) => ({ cases, of: 50 }));
const outside = (points: { beyond: unknown }[]) => points.flatMap(({ beyond }, i) => (beyond ? [i + 1] : []));

it('centre .231333, limits .0524275 and .410239; 15 and 23 lie outside', () => {
  const { centre, points } = pChart(units);
  expect(centre).toBeCloseTo(0.231333, 6);
  expect(points[0]!.limits).toEqual({ lower: expect.closeTo(0.0524275, 7), upper: expect.closeTo(0.410239, 6) });
  expect(outside(points)).toEqual([15, 23]);
});

it('without those two .215000, limits .0407028 and .389297; number 21 lies outside too', () => {
  const { centre, points } = pChart(units.filter((_, i) => i !== 14 && i !== 22));
  expect(centre).toBeCloseTo(0.215, 12);
  expect(points[0]!.limits).toEqual({ lower: expect.closeTo(0.0407028, 7), upper: expect.closeTo(0.389297, 6) });
  expect(outside(points)).toEqual([20]); // the 21st, one place earlier as the 15th is left out
});
