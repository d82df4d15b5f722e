import fc from 'fast-check';
import { findProtocol } from './catalogue.js';
import { compareWithRoom } from './compare-with-room.js';

const laxity = findProtocol('hipLaxity', '2')!;
const answer = (left: number, right: number, estimate = { left: 0.38, right: 0.44, standardError: 0.02 }) => compareWithRoom(laxity, [{ joint: 'left', value: left }, { joint: 'right', value: right }], estimate);

describe('a reading held against the room estimate', () => {
  it.each([
    [0.83, 0.44, 'digitSlipped', '0.38', /left hip reads 0\.83/],
    [0.38, 0.04, 'digitSlipped', '0.40', /right hip reads 0\.04/],
    [0.38, 1.44, 'differs', undefined, /on either side/],
  ])('%f and %f', (left, right, verdict, fits, words) => {
    const found = answer(left, right);
    expect(found).toMatchObject({ verdict, words: expect.stringMatching(words) });
    expect(found.fits).toBe(fits);
    // The desk reads these words too, so no number of the room stands in them.
    expect(found.words).not.toContain('0.38');
  });

  it('says that sides look exchanged, agree, or cannot be told apart', () => {
    const wide = { left: 0.2, right: 0.7, standardError: 0.02 };
    expect(answer(0.7, 0.2, wide).verdict).toBe('looksSwapped');
    expect(answer(0.2, 0.7, wide).verdict).toBe('looksStraight');
    expect(answer(0.44, 0.38).verdict).toBe('cannotTell');
    expect(compareWithRoom(laxity, [{ joint: 'left', value: 0.4 }, { joint: 'right', reason: 'gasInJoint' }], wide).verdict).toBe('cannotTell');
    expect(compareWithRoom(findProtocol('elbow', '1')!, [{ joint: 'left', value: '1' }, { joint: 'right', value: '0' }], wide).verdict).toBe('cannotTell');
  });

  it('speaks of a slip only where the reading is far off and another number fits', () => {
    const index = fc.integer({ min: 0, max: 112 }).map((n) => n / 100);
    fc.assert(fc.property(index, index, index, index, (l, r, el, er) => {
      const { verdict } = answer(l, r, { left: el, right: er, standardError: 0.02 });
      if (verdict === 'digitSlipped') expect(Math.max(Math.abs(l - el), Math.abs(r - er))).toBeGreaterThan(3.29 * 0.036);
    }));
  });
});
