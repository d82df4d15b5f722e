import type { DataSet } from 'dicom-parser';
import { decodeFrame } from './decode-frame.js';
import { frameBytes } from './frame-bytes.js';
import { shapeOf, type Shape } from './image-shape.js';
import { part10Header } from './part10.js';
import { partsOf, type Part } from './parts.js';
import { inflated, PIXELS, readDataSet } from './read-data-set.js';
import { dicomSyntax, EXPLICIT, type Codec } from './syntaxes.js';
import { elementHead, words, writeParts } from './write-parts.js';

/** Nothing here unpacks this film; the cause says why. */
export class CannotUnpackError extends Error {
  constructor(cause?: unknown) {
    super('this film cannot be unpacked here', { cause });
    this.name = 'CannotUnpackError';
  }
}

/** A film with its pixels as plain numbers, explicit and little-endian, as a medium of general purpose holds it (DICOM PS3.11 annex D); a film that is not compressed stays as it is. `content` must have passed `checkDicom`. */
export async function uncompressed(content: Buffer): Promise<Buffer> {
  const film = inflated(content);
  const data = readDataSet(film);
  const syntax = dicomSyntax(data.string('x00020010') ?? '');
  if (!syntax?.compressed) return content;
  const { codec } = syntax;
  const shape = shapeOf(data);
  const colour = colourOf(codec, shape);
  if (codec === 'none' || !colour) throw new CannotUnpackError();
  const frames = await unpacked(data, codec, shape);
  const parts = new Map(partsOf(data, false, new Set([PIXELS])).map((part) => [part.tag, part]));
  for (const part of [...changed(shape, colour), ...lossOf(data, codec, frames)]) parts.set(part.tag, part);
  const head = part10Header({ sopClassUid: data.string('x00080016') ?? '', sopInstanceUid: data.string('x00080018') ?? '', transferSyntax: EXPLICIT });
  const size = frames.reduce((sum, frame) => sum + frame.length, 0);
  const padding = Buffer.alloc(size % 2);
  return Buffer.concat([head, writeParts([...parts.values()]), elementHead(PIXELS, shape.bitsAllocated === 8 ? 'OB' : 'OW', size + padding.length), ...frames, padding]);
}

async function unpacked(data: DataSet, codec: Exclude<Codec, 'none'>, shape: Shape): Promise<Uint8Array[]> {
  const frames: Uint8Array[] = [];
  try {
    for (let n = 0; n < shape.frames; n++) frames.push(await decodeFrame(codec, frameBytes(data, shape, n), shape));
  } catch (error) {
    throw new CannotUnpackError(error);
  }
  return frames;
}

/** Which colours come out. Of a JPEG that is said to hold red, green and blue, and of the other kinds, the code stream may mean something else than the file says. */
function colourOf(codec: Codec, { samples, photometric }: Shape): 'RGB' | 'as it was' | undefined {
  if (samples === 1 || codec === 'rle') return 'as it was';
  return codec === 'jpeg' && photometric.startsWith('YBR') ? 'RGB' : undefined;
}

function changed({ samples }: Shape, colour: 'RGB' | 'as it was'): Part[] {
  if (samples === 1) return [];
  return [...(colour === 'RGB' ? [words('x00280004', 'CS', 'RGB')] : []), { tag: 'x00280006', vr: 'US', value: Buffer.alloc(2) }];
}

/** What has once been packed with loss says so for ever (DICOM PS3.3 C.7.6.1.1.5); some machines leave it to the transfer syntax, which goes. */
function lossOf(data: DataSet, codec: Codec, frames: Uint8Array[]): Part[] {
  const lossy = codec === 'jpeg' ? 'ISO_10918_1' : data.string('x00020010') === NEAR_LOSSLESS ? 'ISO_14495_1' : undefined;
  if (!lossy || data.string('x00282110')?.trim() === '01') return [];
  const ratio = frames.reduce((sum, frame) => sum + frame.length, 0) / data.elements[PIXELS]!.length;
  return [words('x00282110', 'CS', '01'), words('x00282112', 'DS', ratio.toFixed(1)), words('x00282114', 'CS', lossy)];
}

const NEAR_LOSSLESS = '1.2.840.10008.1.2.4.81';
