import type { DataSet } from 'dicom-parser';
import { parseDicom } from './dicom-parse.js';
import { inEightBits, type GreyWindow } from './grey-window.js';

/** The first frame of an uncompressed little-endian greyscale DICOM file in 8 bits, as it is meant to be seen. */
export function dicomGrey(content: Buffer): Buffer {
  const data = parseDicom(content);
  return inEightBits(storedValues(data), {
    window: windowOf(data),
    slope: data.floatString('x00281053') || 1,
    intercept: data.floatString('x00281052') || 0,
    inverted: data.string('x00280004') === 'MONOCHROME1',
  });
}

function windowOf(data: DataSet): GreyWindow | undefined {
  const [centre, width] = [data.floatString('x00281050', 0), data.floatString('x00281051', 0)];
  const usable = centre !== undefined && width !== undefined && Number.isFinite(centre) && width >= 1;
  return usable ? { centre, width } : undefined;
}

function storedValues(data: DataSet): Int32Array {
  const pixels = data.elements.x7fe00010!;
  const count = data.uint16('x00280010')! * data.uint16('x00280011')!;
  const allocated = data.uint16('x00280100')!;
  const bits = data.uint16('x00280101') ?? allocated;
  // shifted to the top and back: bits above those in use may hold old overlays and mean nothing
  const shift = 31 - (data.uint16('x00280102') ?? bits - 1);
  const signed = data.uint16('x00280103') === 1;
  const bytes = new DataView(data.byteArray.buffer, data.byteArray.byteOffset + pixels.dataOffset, pixels.length);
  const values = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    const raw = (allocated === 8 ? bytes.getUint8(i) : bytes.getUint16(i * 2, true)) << shift;
    values[i] = signed ? raw >> (32 - bits) : raw >>> (32 - bits);
  }
  return values;
}
