import { fitted, panBy, zoomAt } from './film-view.js';

const window = { width: 800, height: 600 };
/** The point of the film, from its centre, that is seen at a spot of the window. */
const under = (view: { scale: number; x: number; y: number }, at: { x: number; y: number }) => [(at.x - view.x) / view.scale, (at.y - view.y) / view.scale];

describe('looking at a film', () => {
  it('keeps what is under the pointer under it while it grows', () => {
    const at = { x: 120, y: -45 };
    const near = zoomAt(zoomAt(fitted, 2, { x: 10, y: 10 }), 1.5, at);
    const nearer = zoomAt(near, 1.7, at);
    expect(under(nearer, at)[0]).toBeCloseTo(under(near, at)[0] ?? NaN, 9);
    expect(under(nearer, at)[1]).toBeCloseTo(under(near, at)[1] ?? NaN, 9);
  });

  it('never shrinks below the whole film, and comes back to the middle there', () => {
    expect(zoomAt(zoomAt(fitted, 3, { x: 200, y: 100 }), 0.01, { x: 0, y: 0 })).toEqual(fitted);
  });

  it('never grows without end', () => {
    let view = fitted;
    for (let i = 0; i < 50; i++) view = zoomAt(view, 2, { x: 0, y: 0 });
    expect(view.scale).toBe(12);
  });

  it('cannot be pushed out of the window, and not at all while the whole film is seen', () => {
    expect(panBy(fitted, 500, 500, window)).toEqual(fitted);
    expect(panBy(zoomAt(fitted, 2, { x: 0, y: 0 }), 9_999, -9_999, window)).toEqual({ scale: 2, x: 400, y: -300 });
  });
});
