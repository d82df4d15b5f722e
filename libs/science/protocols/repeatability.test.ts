import fc from 'fast-check';
import { findProtocol } from './catalogue.js';
import { secondLook, smallestRealChange, standardError } from './second-look.js';
import { sidesSwapped } from './sides-swapped.js';
import type { JointReading } from './types.js';

const laxity = findProtocol('hipLaxity', '2')!;

describe('secondLook', () => {
  it('reproduces the standard error and the smallest real change', () => {
    // SD 0.15 (Arq Bras Med Vet Zootec 2020;72(4)), ICC 0.94 and 0.85 (Smith et al. Am J Vet Res 1997;58:1076-1077); values recomputed from them.
    expect(standardError(0.15, 0.94)).toBeCloseTo(0.0367423, 7);
    expect(standardError(0.15, 0.85)).toBeCloseTo(0.0580948, 7);
    expect(smallestRealChange(0.0367423)).toBeCloseTo(0.101845, 5);
    expect(smallestRealChange(0.0580948)).toBeCloseTo(0.16103, 5);
  });

  it('gives two decimals, names its source and stays above 0', () => {
    expect(secondLook(laxity, 0.38)).toMatchObject({ from: 0.28, to: 0.48, source: expect.stringContaining('1997;58:1076') });
    expect(secondLook(laxity, 0.05)).toMatchObject({ from: 0, to: 0.15 });
  });

  it('gives a reason where nobody has measured it', () => {
    expect(secondLook(findProtocol('hipExtended', '1')!, 'C')).toEqual({ none: expect.stringContaining('step') });
    expect(secondLook(findProtocol('hipLoaded', '1')!, 4.5)).toEqual({ none: expect.stringContaining('Nobody has measured') });
  });
});

describe('sidesSwapped', () => {
  const reading = (left: number, right: number): JointReading[] => [
    { joint: 'left', value: left },
    { joint: 'right', value: right },
  ];
  const verdict = (left: number, right: number, estimate: [number, number]) =>
    sidesSwapped(laxity, reading(left, right), { left: estimate[0], right: estimate[1], standardError: 0.03 }).verdict;

  it('finds an exchange where the hips are far apart', () => {
    expect(verdict(0.62, 0.31, [0.3, 0.6])).toBe('looksSwapped');
    expect(verdict(0.31, 0.62, [0.3, 0.6])).toBe('looksStraight');
  });

  it('says that it cannot tell where they are nearly alike or one has no value', () => {
    expect(verdict(0.42, 0.4, [0.4, 0.42])).toBe('cannotTell');
    expect(sidesSwapped(laxity, [{ joint: 'left', value: 0.4 }, { joint: 'right', reason: 'gasInJoint' }], { left: 0.4, right: 0.4, standardError: 0.03 }).verdict).toBe('cannotTell');
    expect(sidesSwapped(findProtocol('hipLoaded', '1')!, reading(2, 9), { left: 9, right: 2, standardError: 1 }).verdict).toBe('cannotTell');
  });

  it('says that the reading differs where neither way fits', () => {
    expect(verdict(0.04, 0.05, [0.4, 0.5])).toBe('differs');
  });

  it('turns "swapped" into "straight" when the reading is exchanged', () => {
    const index = fc.double({ min: 0, max: 1, noNaN: true });
    const mirror: Record<string, string> = { looksSwapped: 'looksStraight', looksStraight: 'looksSwapped', differs: 'differs', cannotTell: 'cannotTell' };
    fc.assert(fc.property(index, index, index, index, (l, r, el, er) => {
      expect(verdict(r, l, [el, er])).toBe(mirror[verdict(l, r, [el, er])]);
    }));
  });

  it('refuses an estimate that is no number', () => {
    expect(() => verdict(0.3, 0.3, [NaN, 0.3])).toThrow(/Measure the film again/);
  });
});
