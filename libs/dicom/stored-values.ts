import type { Shape } from './image-shape.js';

/** The numbers of the first sample of one frame, as they were stored. */
export function storedValues(bytes: Uint8Array, shape: Shape, { bigEndian = false, inWords = false } = {}): Int32Array {
  const { rows, columns, bitsAllocated, bitsStored, highBit, signed } = shape;
  const values = new Int32Array(rows * columns);
  // shifted to the top and back: bits above those in use may hold old overlays and mean nothing
  const [up, down] = [31 - highBit, 32 - bitsStored];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // Bytes that were kept as words changed places with the order of the words.
  const beside = bigEndian && inWords ? 1 : 0;
  const step = (bitsAllocated / 8) * shape.samples;
  for (let i = 0, at = 0; i < values.length; i++, at += step) {
    const raw = (bitsAllocated === 8 ? bytes[at ^ beside]! : view.getUint16(at, !bigEndian)) << up;
    values[i] = signed ? raw >> down : raw >>> down;
  }
  return values;
}
