import { kaplanMeier, timeUntil } from '#libs/science/agreement/kaplan-meier';

// Freireich et al. Blood 1963;21:699-716, weeks in remission under 6-MP; + still in remission. The shares and their standard errors
// are printed to three decimals by the example of a numerical library; recomputed with R's survival.
const weeks = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+'.split(' ');
const curve = kaplanMeier(weeks.map((text) => ({ time: parseInt(text, 10), closed: !text.endsWith('+') })));

it.each([
  [6, 21, 0.857143, 0.0763604],
  [7, 17, 0.806723, 0.0869353],
  [10, 15, 0.752941, 0.0963496],
  [13, 12, 0.690196, 0.106815],
  [16, 11, 0.627451, 0.114054],
  [22, 7, 0.537815, 0.128234],
  [23, 6, 0.448179, 0.134591],
])('week %i: %i at risk, share %f, standard error %f', (time, atRisk, open, standardError) => {
  expect(curve.steps.find((step) => step.time === time)).toMatchObject({ atRisk, open: expect.closeTo(open, 6), standardError: expect.closeTo(standardError, 6) });
});

it('at week 6 the interval on the log-log scale is .619718 to .951552', () => {
  expect(curve.steps[0]!.mayBe).toEqual({ lower: expect.closeTo(0.619718, 6), upper: expect.closeTo(0.951552, 6) });
});

it('half by week 23, at the earliest 13, with no upper end; three quarters not reached', () => {
  expect(timeUntil(curve, 0.5)).toEqual({ time: 23, lower: 13, upper: null });
  expect(timeUntil(curve, 0.75).time).toBeNull();
});

it('the mean of the closed cases alone, 12.1, is the wrong answer', () => {
  const closed = weeks.filter((text) => !text.endsWith('+')).map(Number);
  expect(closed.reduce((a, b) => a + b) / closed.length).toBeCloseTo(12.1, 1);
  expect(curve.n).toBe(21);
  expect(curve.stillOpen).toBe(12);
});
