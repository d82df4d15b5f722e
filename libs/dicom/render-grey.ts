import type { DataSet } from 'dicom-parser';
import { decodeFrame } from './decode-frame.js';
import { frameBytes } from './frame-bytes.js';
import { inEightBits, type GreyScale, type GreyWindow } from './grey-window.js';
import { shapeOf } from './image-shape.js';
import { inflated, PIXELS, readDataSet } from './read-data-set.js';
import { storedValues } from './stored-values.js';
import { dicomSyntax } from './syntaxes.js';

/** The first frame of a greyscale DICOM file in 8 bits, as it is meant to be seen. `content` must have passed `checkDicom`. */
export async function renderGrey(content: Buffer): Promise<Buffer> {
  const { values, scale } = await greyOf(content);
  return inEightBits(values, scale);
}

/** The numbers of that frame as they were stored, and how they are meant to be seen. */
export async function greyOf(content: Buffer): Promise<{ columns: number; rows: number; values: Int32Array; scale: GreyScale }> {
  const data = readDataSet(inflated(content));
  const syntax = dicomSyntax(data.string('x00020010') ?? '');
  if (!syntax || (syntax.compressed && syntax.codec === 'none')) throw new RangeError('nothing here decodes this transfer syntax');
  const shape = shapeOf(data);
  const stored = frameBytes(data, shape);
  const plain = syntax.compressed ? await decodeFrame(syntax.codec as Exclude<typeof syntax.codec, 'none'>, stored, shape) : stored;
  return {
    columns: shape.columns,
    rows: shape.rows,
    values: storedValues(plain, shape, { bigEndian: !syntax.compressed && syntax.bigEndian, inWords: data.elements[PIXELS]?.vr === 'OW' }),
    scale: { window: windowOf(data), slope: data.floatString('x00281053') || 1, intercept: data.floatString('x00281052') || 0, inverted: shape.photometric === 'MONOCHROME1' },
  };
}

function windowOf(data: DataSet): GreyWindow | undefined {
  const [centre, width, named] = [data.floatString('x00281050', 0), data.floatString('x00281051', 0), data.string('x00281056')?.trim()];
  const shape = named === 'LINEAR_EXACT' || named === 'SIGMOID' ? named : 'LINEAR';
  const usable = centre !== undefined && width !== undefined && Number.isFinite(centre) && Number.isFinite(width) && (shape === 'LINEAR' ? width >= 1 : width > 0);
  return usable ? { centre, width, shape } : undefined;
}
