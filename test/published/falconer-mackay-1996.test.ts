import { normalCdf } from '#libs/science/distributions';
import { intensity } from '#libs/science/selection/intensity';
import { correlatedResponse, response } from '#libs/science/selection/response';

// Falconer & Mackay, Introduction to Quantitative Genetics, 4th ed. 1996, Appendix Table A; six digits recomputed with R and scipy.
// 0.40 and 0.50 are what schemes commonly choose: common practice, no source.
it.each([
  [0.001, 3.090232, 3.36709, 0.932205],
  [0.01, 2.326348, 2.665214, 0.903151],
  [0.05, 1.644854, 2.062713, 0.861923],
  [0.1, 1.281552, 1.754983, 0.830865],
  [0.2, 0.841621, 1.39981, 0.781357],
  [0.25, 0.67449, 1.271106, 0.758363],
  [0.4, 0.253347, 0.965856, 0.688182],
  [0.5, 0, 0.797885, 0.63662],
  [0.6, -0.253347, 0.643904, 0.577744],
  [0.8, -0.841621, 0.349952, 0.416994],
])('share %f: x %f, i %f, k %f', (share, x, i, k) => {
  expect(intensity(share)).toEqual({ x: expect.closeTo(x, 6), i: expect.closeTo(i, 6), k: expect.closeTo(k, 6) });
});

// The breeder's equation; recomputed.
it('heritability .6, spread .15, a fifth of both sexes: selected by .209971, answered by .125983', () => {
  const { i } = intensity(0.2);
  expect(i * 0.15).toBeCloseTo(0.209971, 6);
  expect(response(0.6, 0.15, { dogs: i, bitches: i })).toBeCloseTo(0.125983, 6);
});

it('a tenth of the dogs and half of the bitches: mean intensity 1.276434, answered by .114879', () => {
  const both = { dogs: intensity(0.1).i, bitches: intensity(0.5).i };
  expect((both.dogs + both.bitches) / 2).toBeCloseTo(1.276434, 6);
  expect(response(0.6, 0.15, both)).toBeCloseTo(0.114879, 6);
});

// A normal population with mean .5 and spread .15 cut from above; recomputed.
it.each([
  [0.3, 0.0912112, 0.23028, 0.00369504],
  [0.4, 0.252493, 0.310223, 0.00546247],
  [0.5, 0.5, 0.380317, 0.00817606],
])('kept up to %f: share %f, mean %f, variance %f', (end, share, mean, variance) => {
  const { i, k } = intensity(normalCdf((end - 0.5) / 0.15));
  expect(normalCdf((end - 0.5) / 0.15)).toBeCloseTo(share, 6);
  expect(0.5 - 0.15 * i).toBeCloseTo(mean, 6);
  expect(0.15 ** 2 * (1 - k)).toBeCloseTo(variance, 8);
});

// Correlated response at equal intensity; heritabilities and correlations: Zhang et al. Am J Vet Res 2009;70:483-492.
it.each([
  ['extended score', 0.76, 0.69, 0.770178],
  ['Norberg angle', 0.73, 0.69, 0.754824],
])('choosing by the %s moves laxity by that part', (_by, chosen, genetic, part) => {
  expect(correlatedResponse(chosen, 0.61, genetic)).toBeCloseTo(part, 6);
});
