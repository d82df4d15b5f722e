import fc from 'fast-check';
import { changeOfHalf } from './second-look-half.js';
import { secondLookOfShare } from './second-look-share.js';

const icc = fc.double({ min: 0, max: 1, noNaN: true });
const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

it('nothing changes when readings repeat, and everything is by chance when they do not', () => {
  expect(changeOfHalf(1)).toBe(0);
  expect(changeOfHalf(0)).toBe(0.5);
  fc.assert(fc.property(share, (s) => {
    expect(secondLookOfShare(s, 1).change).toBeCloseTo(0, 8);
    expect(secondLookOfShare(s, 0).leave).toBeCloseTo(1 - s, 8);
  }));
});

it('fewer change the better readings repeat', () => {
  fc.assert(fc.property(share, icc, icc, (s, a, b) => {
    expect(secondLookOfShare(s, Math.max(a, b)).change).toBeLessThanOrEqual(secondLookOfShare(s, Math.min(a, b)).change + 1e-9);
  }));
});

it('as many change when the rest is chosen instead', () => {
  fc.assert(fc.property(share, icc, (s, r) => expect(secondLookOfShare(s, r).change).toBeCloseTo(secondLookOfShare(1 - s, r).change, 8)));
});

it.each([[-0.1], [1.1], [NaN]])('a correlation of %f, a share of %f are refused', (bad) => {
  expect(() => changeOfHalf(bad)).toThrow('is not an intraclass correlation');
  expect(() => secondLookOfShare(bad, 0.94)).toThrow('is not a share to choose');
});
