import fc from 'fast-check';
import { breedingAnimals } from './breeding-animals.js';
import { intensity, intensityOf } from './intensity.js';
import { correlatedResponse, response } from './response.js';
import { varianceAfterChoosing } from './variance-after-choosing.js';

const share = fc.double({ min: 0.001, max: 1, noNaN: true });
const choice = fc.integer({ min: 1, max: 400 }).chain((n) => fc.record({ n: fc.constant(n), chosen: fc.integer({ min: 1, max: n }) }));

it('the fewer are chosen the further they lie from the mean; all of them lie at it', () => {
  fc.assert(fc.property(share, share, (a, b) => expect(intensity(Math.min(a, b)).i).toBeGreaterThanOrEqual(intensity(Math.max(a, b)).i)));
  expect(intensity(1)).toEqual({ i: 0, k: 0, x: -Infinity });
});

it('chosen and left out balance: p·i(p) = (1 − p)·i(1 − p)', () => {
  fc.assert(fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (p) => expect(p * intensity(p).i).toBeCloseTo((1 - p) * intensity(1 - p).i, 9)));
  fc.assert(fc.property(choice, ({ n, chosen }) => {
    if (chosen < n) expect(chosen * intensityOf(chosen, n)).toBeCloseTo((n - chosen) * intensityOf(n - chosen, n), 8);
  }), { numRuns: 30 });
});

it('few animals give less than the same share of an endless population, and many give the same', () => {
  fc.assert(fc.property(choice, ({ n, chosen }) => expect(intensityOf(chosen, n)).toBeLessThanOrEqual(intensity(chosen / n).i + 1e-9)), { numRuns: 30 });
  expect(intensityOf(4_000_000, 10_000_000)).toBeCloseTo(intensity(0.4).i, 6);
});

// Means of the better of two and of the two better of three normal values: closed forms 1/√π and 3/(4√π) of any text on order statistics.
it('the better of two lies 1/√π above the mean, two of three 3/(4√π)', () => {
  expect(intensityOf(1, 2)).toBeCloseTo(1 / Math.sqrt(Math.PI), 10);
  expect(intensityOf(2, 3)).toBeCloseTo(3 / (4 * Math.sqrt(Math.PI)), 10);
});

it('without heritability nothing answers; choosing all moves nothing', () => {
  expect(response(0, 0.15, { dogs: 1, bitches: 1 })).toBe(0);
  expect(response(0.6, 0.15, { dogs: intensity(1).i, bitches: intensity(1).i })).toBe(0);
});

it('a trait answers itself fully', () => {
  fc.assert(fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), (h) => expect(correlatedResponse(h, h, 1)).toBeCloseTo(1, 12)));
});

it('variance falls when some are chosen and stays when all are', () => {
  expect(varianceAfterChoosing({ genetic: 50, environment: 50 }, 50, { dogs: 0, bitches: 0 })).toEqual({ genetic: 50, environment: 50 });
  expect(varianceAfterChoosing({ genetic: 50, environment: 50 }, 50, { dogs: 0.6, bitches: 0 }).genetic).toBeLessThan(50);
});

// Wright, Genetics 1931;16:97-159; recomputed by hand.
it('10 dogs and 40 bitches count as 32, and inbreeding rises by 1/64 in a generation', () => {
  expect(breedingAnimals(10, 40)).toEqual({ dogs: 10, bitches: 40, effective: 32, inbreeding: 1 / 64 });
});

describe('is refused, with the reason', () => {
  it.each([[0], [-0.1], [1.1], [NaN]])('a share of %f', (bad) => expect(() => intensity(bad)).toThrow('is not a share to choose'));
  it.each([[0, 10], [11, 10], [1.5, 10], [1, 0], [NaN, 10], [1, Infinity]])('%f of %f', (chosen, n) => expect(() => intensityOf(chosen, n)).toThrow('cannot be chosen'));
  it.each([[-0.1], [1.1], [NaN]])('a heritability of %f', (bad) => {
    expect(() => response(bad, 0.15, { dogs: 1, bitches: 1 })).toThrow('is not a heritability');
    expect(() => correlatedResponse(bad, 0.5, 0.5)).toThrow('not two heritabilities');
  });
  it.each([[0], [-1], [NaN], [Infinity]])('a spread of %f', (bad) => expect(() => response(0.5, bad, { dogs: 1, bitches: 1 })).toThrow('is not a standard deviation'));
  it('a genetic correlation beyond 1', () => expect(() => correlatedResponse(0.5, 0.5, 1.2)).toThrow('1.2 is not a genetic correlation'));
  it.each([[0, 50, 50], [50, -1, 50], [50, 50, NaN]])('variances of %f, %f and %f', (genetic, environment, base) => expect(() => varianceAfterChoosing({ genetic, environment }, base, { dogs: 0, bitches: 0 })).toThrow('not three variances'));
  it.each([[0, 5], [5, 0], [1.5, 5], [NaN, 5]])('%f dogs and %f bitches', (dogs, bitches) => expect(() => breedingAnimals(dogs, bitches)).toThrow('nothing can be bred'));
});
