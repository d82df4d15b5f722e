import fc from 'fast-check';
import { type Pair, blandAltman } from './bland-altman.js';
import { fleissKappa } from './fleiss-kappa.js';
import { intraclass } from './intraclass.js';
import { kappa } from './kappa.js';
import { withinSubject } from './within-subject.js';

const table = fc.array(fc.array(fc.nat(20), { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 3 }).filter((rows) => rows.flat().some(Boolean));
const turned = (rows: number[][]) => rows[0]!.map((_, j) => rows.map((row) => row[j]!));
const close = (a: number | null, b: number | null) => (a === null || b === null ? expect(a).toBe(b) : expect(a).toBeCloseTo(b, 9));

describe('kappa', () => {
  it('does not ask which reader came first, and never exceeds 1', () => {
    fc.assert(fc.property(table, fc.constantFrom('none', 'linear', 'quadratic'), (rows, weights) => {
      const found = kappa(rows, weights);
      close(found.kappa, kappa(turned(rows), weights).kappa);
      close(found.standardError, kappa(turned(rows), weights).standardError);
      expect(found.kappa ?? 1).toBeLessThanOrEqual(1);
    }));
  });

  it('is 1 where both always agree, 0 where only chance agrees', () => {
    expect(kappa([[5, 0], [0, 7]])).toMatchObject({ kappa: 1, standardError: 0 });
    expect(kappa([[4, 4], [4, 4]]).kappa).toBeCloseTo(0, 12);
  });

  it('has no value where both know one grade only', () => {
    expect(kappa([[30, 0], [0, 0]])).toMatchObject({ n: 30, kappa: null, standardError: null, mayBe: null });
  });

  it.each([[[]], [[[1]]], [[[1, 2], [3]]], [[[0, 0], [0, 0]]], [[[1, -1], [0, 2]]], [[[1, 0.5], [0, 2]]], [[[NaN, 1], [0, 2]]]])('%j is refused as a table', (rows) => {
    expect(() => kappa(rows)).toThrow('This is no table of two readers');
  });

  it.each([[[[0, 1]]], [[[1, 1], [1, 0]]], [[[0, -1], [1, 0]]], [[[0, 0], [0, 0]]], [[[0, NaN], [1, 0]]]])('%j is refused as weights', (weights) => {
    expect(() => kappa([[1, 2], [3, 4]], weights)).toThrow('These are no weights for 2 grades');
  });
});

describe('Fleiss’ kappa', () => {
  it('is 1 where all readers agree on every film, null where only one grade was given', () => {
    expect(fleissKappa([[3, 0], [0, 3]])).toMatchObject({ kappa: 1, byGrade: [1, 1] });
    expect(fleissKappa([[3, 0], [3, 0]])).toMatchObject({ kappa: null, byGrade: [null, null] });
  });

  it.each([[[]], [[[3, 0]]], [[[3, 0], [2, 0]]], [[[1, 0], [0, 1]]], [[[3], [3]]], [[[4, -1], [3, 0]]]])('%j is refused', (counts) => {
    expect(() => fleissKappa(counts)).toThrow('This is no table of a reading round');
  });
});

const round = fc.integer({ min: 2, max: 5 }).chain((readers) => fc.array(fc.array(fc.integer({ min: 0, max: 100 }), { minLength: readers, maxLength: readers }), { minLength: 3, maxLength: 12 }));

describe('intraclass correlation', () => {
  it('does not change with the unit or the zero of the scale', () => {
    fc.assert(fc.property(round, (rows) => {
      const [a, b] = [intraclass(rows), intraclass(rows.map((row) => row.map((x) => 3 * x - 7)))];
      close(a?.agreement.single.value ?? null, b?.agreement.single.value ?? null);
      close(a?.consistency.single.mayBe?.lower ?? null, b?.consistency.single.mayBe?.lower ?? null);
    }));
  });

  it('lies in its own interval, of one reader and of the mean', () => {
    fc.assert(fc.property(round, (rows) => {
      const found = intraclass(rows.map((row) => row.map((x) => x / 100)));
      for (const { value, mayBe } of found ? [found.oneWay, found.agreement, found.consistency].flatMap(({ single, mean }) => [single, mean]) : []) {
        expect(value).not.toBeNaN();
        if (mayBe) expect(mayBe.lower <= value + 1e-9 && mayBe.upper >= value - 1e-9).toBe(true);
      }
    }), { numRuns: 300 });
  });

  it('has no interval where the readers differ so much that every value is possible', () => {
    expect(intraclass([[1.26, 1.59, 1.06, 1.78, 0.82], [0, 0, 1.57, 0, 0.75]])!.agreement.mean.mayBe).toBeNull();
  });

  it('a reader who always reads ten higher harms agreement and not consistency', () => {
    const found = intraclass([[1, 11], [5, 15], [9, 19], [14, 24]])!;
    expect(found.consistency.single).toEqual({ value: 1, mayBe: null });
    expect(found.agreement.single.value).toBeLessThan(0.5);
  });

  it('has no value where all films were read alike', () => {
    expect(intraclass([[4, 4], [4, 4], [4, 4]])).toBeNull();
    expect(intraclass([[0.4, 0.4], [0.4, 0.4], [0.4, 0.4]])).toBeNull();
  });

  it.each([[[]], [[[1, 2]]], [[[1], [2]]], [[[1, 2], [3]]], [[[1, NaN], [3, 4]]], [[[1, Infinity], [3, 4]]]])('%j is refused', (rows) => {
    expect(() => intraclass(rows)).toThrow('This is no table of a reading round');
  });
});

const pairs = fc.array(fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 })), { minLength: 3, maxLength: 40 }) as fc.Arbitrary<Pair[]>;

describe('limits of agreement', () => {
  it('mirror when the readers change places', () => {
    fc.assert(fc.property(pairs, (all) => {
      const [a, b] = [blandAltman(all), blandAltman(all.map(([x, y]): Pair => [y, x]))];
      expect(a.upper.value).toBeCloseTo(-b.lower.value, 9);
      expect(a.difference.mayBe.lower).toBeCloseTo(-b.difference.mayBe.upper, 9);
    }));
  });

  it('fall together where both always read the same', () => {
    expect(blandAltman([[1, 1], [2, 2], [3, 3]])).toMatchObject({ sd: 0, lower: { value: 0 }, upper: { value: 0 } });
    expect(withinSubject([[1, 1], [2, 2], [3, 3]])).toMatchObject({ sd: 0, smallestRealChange: 0 });
  });

  it('are refused for two films, and for readings that are no numbers', () => {
    expect(() => blandAltman([[1, 2], [3, 4]])).toThrow('2 films read twice say nothing yet');
    expect(() => blandAltman([[1, 2], [3, NaN], [5, 6]])).toThrow('Film 2 has not two numbers (3 and NaN)');
    expect(() => withinSubject([[1, 2], [3, 4]])).toThrow('2 films read more than once say nothing yet');
    expect(() => withinSubject([[1, 2], [3, NaN], [5, 6]])).toThrow('This is no table of a reading round');
  });
});
