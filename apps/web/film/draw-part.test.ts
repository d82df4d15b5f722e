import { drawPart, levelsOf, type Level } from './draw-part.js';
import { shadesOf } from './tone.js';

const shades = shadesOf({ black: 0, white: 255, negative: false }, 255);
/** Brighter to the right by one with each pixel. */
const ramp = (width: number, height: number): Level => ({ width, height, values: Uint16Array.from({ length: width * height }, (_, i) => i % width) });
const greys = (dots: Uint32Array) => [...dots].map((dot) => new Uint8Array(Uint32Array.of(dot).buffer)[0]);

describe('drawing a part of a film', () => {
  it('gives each dot its pixel where both are of one size', () => {
    const film = ramp(8, 4);
    expect(greys(drawPart([film], { x: 0, y: 0, width: 8, height: 4 }, { width: 8, height: 4 }, shades))).toEqual([...film.values]);
  });

  it('goes evenly from pixel to pixel when it is nearer than they are', () => {
    const film = { ...ramp(8, 8), values: ramp(8, 8).values.map((value) => 100 * value) };
    const near = greys(drawPart([film], { x: 2, y: 2, width: 2, height: 2 }, { width: 8, height: 8 }, shadesOf({ black: 0, white: 1000, negative: false }, 1000)));
    // From 1.625 pixels on in steps of a quarter, of which each is 6.4 of 255 greys.
    expect(near.slice(0, 8)).toEqual([42, 48, 54, 61, 67, 73, 80, 86]);
  });

  it('leaves the ground dark beside a picture that is narrower than its box', () => {
    const dots = greys(drawPart([ramp(4, 4)], { x: 0, y: 0, width: 4, height: 4 }, { width: 8, height: 4 }, shadesOf({ black: -1, white: 3, negative: false }, 255)));
    expect(dots.slice(0, 8)).toEqual([5, 5, 64, 128, 191, 255, 5, 5]);
  });

  it('looks at halves from afar, and finds the same middle', () => {
    const levels = levelsOf({ ...ramp(2048, 1024), values: Uint16Array.from({ length: 2048 * 1024 }, (_, i) => (i % 2 === 0 ? 0 : 200)) });
    expect(levels.map((l) => l.width)).toEqual([2048, 1024, 512]);
    // Fine stripes seen from afar are grey, and no pattern of their own.
    const far = greys(drawPart(levels, { x: 0, y: 0, width: 2048, height: 1024 }, { width: 512, height: 256 }, shades));
    expect(new Set(far)).toEqual(new Set([100]));
  });
});
