/** A film's grey values at the detector's own depth, counted from the least that is there. */
export interface FilmPixels {
  columns: number;
  rows: number;
  /** The greatest value; the least is 0. */
  most: number;
  /** What the file, or else the film itself, makes black and what white. */
  black: number;
  white: number;
  /** Low values are bright, as on a film that was looked at against a lamp. */
  negative: boolean;
  values: Uint16Array;
}

const HEAD = 32;

/**
 * Each row as the steps from pixel to pixel, and their low and high bytes apart from each other: neighbours are alike, so
 * this packs to about half of what the values themselves do. Little-endian: columns, rows, most, negative (32 bits each),
 * black, white (64-bit floats), then all low bytes, then all high bytes.
 */
export function packPixels({ columns, rows, most, black, white, negative, values }: FilmPixels): Uint8Array {
  const size = columns * rows;
  const packed = new Uint8Array(HEAD + 2 * size);
  const head = new DataView(packed.buffer);
  [columns, rows, most, Number(negative)].forEach((n, i) => head.setUint32(4 * i, n, true));
  head.setFloat64(16, black, true);
  head.setFloat64(24, white, true);
  for (let i = 0, before = 0; i < size; i++) {
    if (i % columns === 0) before = 0;
    const step = ((values[i]! - before) << 16) >> 16;
    // The sign goes into the lowest bit, so that small steps both ways leave the high byte empty.
    const turned = (step << 1) ^ (step >> 15);
    packed[HEAD + i] = turned;
    packed[HEAD + size + i] = turned >> 8;
    before = values[i]!;
  }
  return packed;
}

export function unpackPixels(packed: Uint8Array): FilmPixels {
  const head = new DataView(packed.buffer, packed.byteOffset, HEAD);
  const [columns, rows, most, negative] = [0, 4, 8, 12].map((at) => head.getUint32(at, true)) as [number, number, number, number];
  const size = columns * rows;
  if (packed.length !== HEAD + 2 * size) throw new RangeError('the pixels were cut short');
  const values = new Uint16Array(size);
  for (let i = 0, before = 0; i < size; i++) {
    if (i % columns === 0) before = 0;
    const turned = packed[HEAD + i]! | (packed[HEAD + size + i]! << 8);
    before = (before + ((turned >>> 1) ^ -(turned & 1))) & 0xffff;
    values[i] = before;
  }
  return { columns, rows, most, negative: negative === 1, black: head.getFloat64(16, true), white: head.getFloat64(24, true), values };
}
