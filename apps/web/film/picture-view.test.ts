import fc from 'fast-check';
import { middleOf, moved, nearer, pixelsPerDot, wholePicture } from './picture-view.js';

const picture = { width: 1200, height: 1000 };

describe('the part of a picture that is shown', () => {
  it('keeps the place under the pointer where it is while it comes nearer', () => {
    const at = { x: 800, y: 300 };
    const view = nearer(wholePicture(picture), 4, at, picture);
    expect(view).toMatchObject({ width: 300, height: 250 });
    expect((at.x - view.x) / view.width).toBeCloseTo(800 / 1200, 12);
  });

  it('never leaves the picture, however it is moved', () => {
    const step = fc.record({ by: fc.double({ min: 0.2, max: 5, noNaN: true }), dx: fc.integer({ min: -900, max: 900 }), dy: fc.integer({ min: -900, max: 900 }) });
    fc.assert(fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
      const view = steps.reduce((v, s) => moved(nearer(v, s.by, middleOf(v), picture), s.dx, s.dy, picture), wholePicture(picture));
      expect(view.x).toBeGreaterThanOrEqual(0);
      expect(view.x + view.width).toBeLessThanOrEqual(picture.width + 1e-9);
      expect(view.y + view.height).toBeLessThanOrEqual(picture.height + 1e-9);
      expect(view.width / view.height).toBeCloseTo(1.2, 9);
    }));
  });

  it('says how many of its pixels one dot of the screen is', () => {
    expect(pixelsPerDot(picture, { width: 600, height: 1000 })).toBe(2);
  });
});
