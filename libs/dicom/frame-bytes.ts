import dicomParser, { type DataSet } from 'dicom-parser';
import type { Shape } from './image-shape.js';
import { PIXELS } from './read-data-set.js';

/** A frame, the first one if not said otherwise, as it stands in the file: plain pixels, or one code stream put together from its fragments. */
export function frameBytes(data: DataSet, { rows, columns, perPixel, bitsAllocated, frames }: Shape, n = 0): Uint8Array {
  const pixels = data.elements[PIXELS]!;
  const size = (rows * columns * perPixel * bitsAllocated) / 8;
  if (!pixels.encapsulatedPixelData) return data.byteArray.subarray(pixels.dataOffset + n * size, pixels.dataOffset + (n + 1) * size);
  const fragments = pixels.fragments ?? [];
  // One frame may be cut into many fragments; of several frames each has one, unless a table says otherwise.
  if (frames === 1) return dicomParser.readEncapsulatedPixelDataFromFragments(data, pixels, 0, fragments.length);
  if (pixels.basicOffsetTable?.length) return dicomParser.readEncapsulatedImageFrame(data, pixels, n);
  return dicomParser.readEncapsulatedPixelDataFromFragments(data, pixels, n, 1);
}
