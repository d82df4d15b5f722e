import sharp from 'sharp';
import { codeStreamSize } from './code-stream-size.js';
import { decodeApart } from './decode-apart.js';
import type { Shape } from './image-shape.js';
import { unpackRle } from './rle.js';
import type { Codec } from './syntaxes.js';

/** A compressed frame as plain little-endian pixels. Throws when the stream cannot be decoded or is of another size than the file says. */
export async function decodeFrame(codec: Exclude<Codec, 'none'>, stream: Uint8Array, shape: Shape): Promise<Uint8Array> {
  const { rows, columns, samples, bitsAllocated } = shape;
  const bytes = bitsAllocated / 8;
  const expected = rows * columns * samples * bytes;
  if (codec === 'rle') return unpackRle(stream, rows * columns, samples, bytes);
  const size = codeStreamSize(stream);
  if (!size || size.width !== columns || size.height !== rows || size.components !== samples) throw new RangeError('the code stream is of another size than the file says');
  const decoded = codec === 'jpeg' ? await baseline(stream, samples) : await decodeApart(codec, stream);
  if (decoded.length === expected) return decoded;
  // Some files keep 8 bits in 16.
  if (bytes === 2 && decoded.length * 2 === expected) return new Uint8Array(Uint16Array.from(decoded).buffer);
  throw new RangeError(`${decoded.length} bytes were decoded of ${expected}`);
}

async function baseline(stream: Uint8Array, samples: number): Promise<Uint8Array> {
  const picture = sharp(stream).removeAlpha();
  return (samples === 1 ? picture.toColourspace('b-w') : picture).raw().toBuffer();
}
