import { type Pair, blandAltman } from '#libs/science/agreement/bland-altman';
import { withinSubject } from '#libs/science/agreement/within-subject';

// Bland & Altman, Lancet 1986;i:307-310: peak flow of 17 subjects, twice with either meter; data as in R's MethComp.
const wright = [[494, 490], [395, 397], [516, 512], [434, 401], [476, 470], [557, 611], [413, 415], [442, 431], [650, 638], [433, 429], [417, 420], [656, 633], [267, 275], [478, 492], [178, 165], [423, 372], [427, 421]] as const;
const mini = [[512, 525], [430, 415], [520, 508], [428, 444], [500, 500], [600, 625], [364, 460], [380, 390], [658, 642], [445, 432], [432, 420], [626, 605], [260, 227], [477, 467], [259, 268], [350, 370], [451, 443]] as const;
const first = wright.map(([w], i): Pair => [w, mini[i]![0]]);

// Printed rounded (−2.1, 38.8, −79.7, 75.5, 9.4, 16.3, and the intervals), from memory; recomputed.
it('limits of mean ± 2 SD as in the paper', () => {
  const { n, difference, sd, lower, upper } = blandAltman(first, 2);
  expect([n, difference.value, sd]).toEqual([17, expect.closeTo(-2.117647, 6), expect.closeTo(38.76513, 6)]);
  expect(difference.mayBe).toEqual({ lower: expect.closeTo(-22.048838, 6), upper: expect.closeTo(17.813544, 6) });
  expect(lower).toEqual({ value: expect.closeTo(-79.647907, 6), mayBe: { lower: expect.closeTo(-114.169742, 6), upper: expect.closeTo(-45.126072, 6) } });
  expect(upper).toEqual({ value: expect.closeTo(75.412613, 6), mayBe: { lower: expect.closeTo(40.890778, 6), upper: expect.closeTo(109.934448, 6) } });
});

it('limits of mean ± 1.96 SD', () => {
  const { lower, upper } = blandAltman(first, 1.96);
  expect([lower.value, upper.value]).toEqual([expect.closeTo(-78.097302, 6), expect.closeTo(73.862007, 6)]);
});

// Two limits of agreement of two devices; mean and SD of the differences printed in Front Vet Sci 2020;7:491, limits recomputed.
it('differences of .001 ± .045 have limits −.0872 and .0892', () => {
  const half = 0.045 * Math.sqrt(207 / 208);
  const { lower, upper } = blandAltman(Array.from({ length: 208 }, (_, i): Pair => [0.001 + (i % 2 ? half : -half), 0]));
  expect([lower.value, upper.value]).toEqual([expect.closeTo(-0.0872, 4), expect.closeTo(0.0892, 4)]);
});

it('within one subject: Wright 15.306669, mini 19.910831; repeatability of Wright 42.427922 with 1.96, 42.427142 with the quantile itself', () => {
  expect(withinSubject(wright).sd).toBeCloseTo(15.306669, 6);
  expect(withinSubject(mini).sd).toBeCloseTo(19.910831, 6);
  expect(1.96 * Math.SQRT2 * withinSubject(wright).sd).toBeCloseTo(42.427922, 6);
  expect(withinSubject(wright).smallestRealChange).toBeCloseTo(42.427142, 5);
});

it('the paper’s own coefficient, 2·√(Σd²/n): Wright 43.293798, mini 56.316333', () => {
  expect(2 * Math.SQRT2 * withinSubject(wright).sd).toBeCloseTo(43.293798, 6);
  expect(2 * Math.SQRT2 * withinSubject(mini).sd).toBeCloseTo(56.316333, 6);
});
