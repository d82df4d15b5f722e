import type { DataSet, Element } from 'dicom-parser';
import { dicomIdentity, type DicomIdentity } from './dicom-identity.js';
import { parseDicom } from './dicom-parse.js';
import { dicomSyntax, type DicomSyntax } from './dicom-syntax.js';
import { ImageRefused } from './image-refused.js';
import { MAX_PIXELS } from './picture-check.js';

export interface CheckedDicom extends DicomIdentity {
  kind: 'dicom';
  width: number;
  height: number;
  /** Bits in use of one sample. */
  bits: number;
  channels: number;
  frames: number;
  transferSyntax: string;
  compressed: boolean;
}

const PIXELS = 'x7fe00010';
const AGAIN = 'Export the film again and send the new file.';
const truncated = () => new ImageRefused('IMAGE_TRUNCATED', `The image in the DICOM file was cut short on the way. ${AGAIN}`);
const inconsistent = (what: string) => new ImageRefused('DICOM_INCONSISTENT', `The DICOM file contradicts itself: ${what}. ${AGAIN}`);

export function checkDicom(content: Buffer): CheckedDicom {
  try {
    return check(content);
  } catch (error) {
    if (error instanceof ImageRefused) throw error;
    // the parser reads damaged values past their ends
    throw new ImageRefused('IMAGE_TRUNCATED', `The DICOM file is damaged. ${AGAIN}`, { cause: error });
  }
}

function check(content: Buffer): CheckedDicom {
  const data = parseDicom(content);
  const transferSyntax = data.string('x00020010') ?? '';
  const syntax = dicomSyntax(transferSyntax);
  if (!syntax)
    throw new ImageRefused('DICOM_TRANSFER_SYNTAX_UNKNOWN', 'The DICOM file is stored in a way (transfer syntax) that cannot be read here. Export the film uncompressed or as JPEG or JPEG 2000.');
  const pixels = data.elements[PIXELS];
  if (!pixels) throw new ImageRefused('DICOM_WITHOUT_IMAGE', 'The DICOM file holds no image, or it was cut short before the image. Choose the film itself and send that file.');
  const shape = shapeOf(data);
  if (syntax.compressed) checkFragments(data, pixels, shape.frames, syntax);
  else checkLength(data, pixels, shape);
  return {
    kind: 'dicom',
    width: shape.columns,
    height: shape.rows,
    bits: data.uint16('x00280101') ?? shape.bitsAllocated,
    channels: shape.samples,
    frames: shape.frames,
    transferSyntax,
    compressed: syntax.compressed,
    ...dicomIdentity(data),
  };
}

type Shape = ReturnType<typeof shapeOf>;

function shapeOf(data: DataSet) {
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
  const halfColour = data.string('x00280004') === 'YBR_FULL_422';
  return { rows, columns, bitsAllocated, samples, frames, perPixel: halfColour ? 2 : samples };
}

/** PS3.5: the pixels are exactly what rows, columns and bits say, filled up to an even length. */
function checkLength(data: DataSet, pixels: Element, shape: Shape): void {
  const expected = (shape.rows * shape.columns * shape.frames * shape.perPixel * shape.bitsAllocated) / 8;
  if (pixels.encapsulatedPixelData) throw inconsistent('the image is said to be uncompressed but is not');
  if (pixels.dataOffset + pixels.length > data.byteArray.length) throw truncated();
  if (pixels.length < expected) throw truncated();
  if (pixels.length > expected + 1) throw inconsistent(`${pixels.length} bytes are there for an image of ${expected}`);
}

function checkFragments(data: DataSet, pixels: Element, frames: number, syntax: Extract<DicomSyntax, { compressed: true }>): void {
  const { fragments } = pixels;
  if (!pixels.encapsulatedPixelData || !fragments) throw inconsistent('the image is said to be compressed but is not');
  const last = fragments.at(-1);
  if (!last || fragments.length < frames) throw truncated();
  const bytes = Buffer.from(data.byteArray.buffer, data.byteArray.byteOffset, data.byteArray.byteLength);
  const end = last.position + last.length;
  if (fragments.some((fragment) => fragment.position + fragment.length > bytes.length)) throw truncated();
  // the sequence delimiter FFFE,E0DD: without it the end of the file is missing
  if (bytes.subarray(end, end + 4).toString('hex') !== 'feffdde0') throw truncated();
  if (!syntax.begins) return;
  const first = fragments[0]!;
  if (!bytes.subarray(first.position, first.position + 2).equals(Buffer.from(syntax.begins))) throw inconsistent('the image is not compressed in the way it says');
  const tail = bytes.subarray(last.position, end);
  const padded = tail.at(-1) === 0 ? tail.subarray(0, -1) : tail;
  if (padded.subarray(-2).toString('hex') !== 'ffd9') throw truncated();
}
