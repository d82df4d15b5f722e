import fc from 'fast-check';
import { intensity } from './intensity.js';
import { leftToBreed, outlook, type Plan } from './outlook.js';
import { publishedHeritabilities } from './published-heritabilities.js';

const plan = (share: { dogs: number; bitches: number }, screened = 200): Plan => ({ mean: 0.5, sd: 0.15, least: 0, dogs: { screened, share: share.dogs }, bitches: { screened, share: share.bitches }, generations: 3 });
const share = fc.double({ min: 0.05, max: 1, noNaN: true });

// 0.40 and 0.50: common practice, no source.
it.each([[0.4, 80], [0.5, 100]])('at a share of %f of 200 dogs and 200 bitches %i of each are left', (chosen, left) => {
  const { dogs, bitches, effective } = leftToBreed(plan({ dogs: chosen, bitches: chosen }));
  expect([dogs, bitches, effective]).toEqual([left, left, 2 * left]);
});

// The breeder's equation on the intensities of Falconer & Mackay, Appendix Table A: .6·.15·.965856 and .6·.15·.797885.
it.each([[0.4, 0.965856], [0.5, 0.797885]])('many animals at a share of %f answer in the first generation as the handbook says', (chosen, i) => {
  expect(outlook(plan({ dogs: chosen, bitches: chosen }, 100_000), 0.6)[0]).toBeCloseTo(0.5 - 0.6 * 0.15 * i, 5);
});

it('moves further with a higher heritability, a smaller share, and more generations', () => {
  fc.assert(fc.property(share, share, fc.double({ min: 0, max: 0.8, noNaN: true }), (a, b, h) => {
    const [few, many] = [Math.min(a, b), Math.max(a, b)];
    const next = (s: number, heritability: number) => outlook(plan({ dogs: s, bitches: s }), heritability)[0]!;
    expect(next(few, h)).toBeLessThanOrEqual(next(many, h) + 1e-9);
    expect(next(few, h + 0.2)).toBeLessThanOrEqual(next(few, h) + 1e-9);
  }), { numRuns: 25 });
});

it('each generation answers less than the one before, because the variance falls', () => {
  const means = outlook(plan({ dogs: 0.5, bitches: 0.5 }), 0.3);
  const moved = means.map((mean, i) => (i === 0 ? 0.5 : means[i - 1]!) - mean);
  expect(moved[1]).toBeLessThan(moved[0]!);
  expect(moved[2]).toBeLessThan(moved[1]!);
});

it('breeding from all moves nothing', () => {
  expect(outlook(plan({ dogs: 1, bitches: 1 }), 0.6)).toEqual([0.5, 0.5, 0.5]);
});

it('ends where there is nothing lower', () => {
  expect(outlook({ ...plan({ dogs: 0.05, bitches: 0.05 }), mean: 0.1 }, 0.83)).toEqual([]);
});

it('all published heritabilities are shares with a source', () => {
  for (const row of Object.values(publishedHeritabilities).flat()) {
    expect(row.heritability).toBeGreaterThan(0);
    expect(row.heritability).toBeLessThan(1);
    expect(row.citation).toMatch(/\d{4}/);
  }
});

it.each([[{ screened: 0, share: 0.5 }], [{ screened: 1.5, share: 0.5 }], [{ screened: NaN, share: 0.5 }], [{ screened: 10, share: 0.01 }], [{ screened: 10, share: 0 }], [{ screened: 10, share: 1.1 }]])('%j is refused', (dogs) => {
  expect(() => leftToBreed({ dogs, bitches: { screened: 10, share: 0.5 } })).toThrow(/none to choose from|nothing can be bred|not a share to choose/);
});

it('dogs and bitches may be chosen by different shares', () => {
  expect(leftToBreed(plan({ dogs: 0.1, bitches: 0.5 }, 100_000)).intensity).toEqual({ dogs: expect.closeTo(intensity(0.1).i, 3), bitches: expect.closeTo(intensity(0.5).i, 3) });
});
