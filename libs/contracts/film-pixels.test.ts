import fc from 'fast-check';
import { packPixels, unpackPixels } from './film-pixels.js';

const film = fc.integer({ min: 1, max: 12 }).chain((columns) =>
  fc.record({ columns: fc.constant(columns), most: fc.integer({ min: 0, max: 65_535 }), black: fc.double({ noNaN: true }), white: fc.double({ noNaN: true }), negative: fc.boolean() }).chain((head) =>
    fc.integer({ min: 1, max: 9 }).chain((rows) =>
      fc.array(fc.integer({ min: 0, max: 65_535 }), { minLength: columns * rows, maxLength: columns * rows }).map((values) => ({ ...head, rows, values: Uint16Array.from(values) })))));

describe('the pixels of a film on their way to the screen', () => {
  it('arrive as they left, whatever the values', () => {
    fc.assert(fc.property(film, (one) => expect(unpackPixels(packPixels(one))).toEqual(one)));
  });

  it('leave the high bytes empty where neighbours are alike', () => {
    const values = Uint16Array.from({ length: 64 }, (_, i) => (i % 8 === 0 ? 0 : 40 + (i % 3)));
    const packed = packPixels({ columns: 8, rows: 8, most: 42, black: 0, white: 42, negative: false, values });
    expect([...packed.subarray(32 + 64)].every((byte) => byte === 0)).toBe(true);
  });

  it('are refused when some are missing', () => {
    const packed = packPixels({ columns: 2, rows: 2, most: 3, black: 0, white: 3, negative: false, values: Uint16Array.of(0, 1, 2, 3) });
    expect(() => unpackPixels(packed.subarray(0, packed.length - 1))).toThrow('cut short');
  });
});
