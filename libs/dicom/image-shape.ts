import type { DataSet } from 'dicom-parser';
import { MAX_PIXELS } from './check-picture.js';
import { ImageRefused } from './image-refused.js';

const AGAIN = 'Export the film again and send the new file.';
export const truncated = () => new ImageRefused('IMAGE_TRUNCATED', `The image in the DICOM file was cut short on the way. ${AGAIN}`);
export const inconsistent = (what: string) => new ImageRefused('DICOM_INCONSISTENT', `The DICOM file contradicts itself: ${what}. ${AGAIN}`);

/** How the pixels are laid out; all of it was found to be possible. */
export type Shape = ReturnType<typeof shapeOf>;

export function shapeOf(data: DataSet) {
  const [rows, columns, bitsAllocated] = [data.uint16('x00280010'), data.uint16('x00280011'), data.uint16('x00280100')];
  if (!rows || !columns || !bitsAllocated) throw inconsistent('the size of the image is missing');
  if (bitsAllocated !== 8 && bitsAllocated !== 16) throw inconsistent(`${bitsAllocated} bits for a pixel are not usual for a radiograph`);
  const bitsStored = data.uint16('x00280101') ?? bitsAllocated;
  if (bitsStored < 1 || bitsStored > bitsAllocated) throw inconsistent(`${bitsStored} bits cannot be stored in ${bitsAllocated}`);
  const [samples, frames] = [data.uint16('x00280002') ?? 1, data.intString('x00280008') ?? 1];
  if (samples !== 1 && samples !== 3) throw inconsistent(`a pixel has ${samples} values`);
  if (!Number.isInteger(frames) || frames < 1) throw inconsistent('the number of frames is wrong');
  if (rows * columns * frames > MAX_PIXELS)
    throw new ImageRefused('IMAGE_TOO_LARGE', `The image has more than ${MAX_PIXELS / 1_000_000} million pixels. Send one film in a file, at the detector's own size.`);
  const photometric = data.string('x00280004')?.trim() ?? '';
  return {
    rows, columns, bitsAllocated, bitsStored, samples, frames, photometric,
    perPixel: photometric === 'YBR_FULL_422' ? 2 : samples,
    highBit: data.uint16('x00280102') ?? bitsStored - 1,
    signed: data.uint16('x00280103') === 1,
  };
}
