import { Readable } from 'node:stream';
import { crc32, createInflate } from 'node:zlib';
import sharp from 'sharp';
import { ImageRefused } from './image-refused.js';

export interface CheckedPicture {
  kind: 'png' | 'jpeg';
  width: number;
  height: number;
  /** Bits of one sample. */
  bits: number;
  channels: number;
}

/** About four times the largest X-ray detectors; a small file may claim far more and exhaust the memory. */
export const MAX_PIXELS = 64_000_000;

export async function checkPicture(content: Buffer, kind: CheckedPicture['kind']): Promise<CheckedPicture> {
  try {
    const picture = sharp(content, { failOn: 'warning', limitInputPixels: MAX_PIXELS });
    const { format, autoOrient, depth, channels } = await picture.metadata();
    if (format !== kind) throw new Error(`decoded as ${format}`);
    if (kind === 'png' && (await unpacked(checkChunks(content))) < sizeOf(content)) throw new Error('pixels are missing');
    await picture.stats(); // decodes every pixel, so a file that was cut short is found out
    // The size as it is shown: a camera may lay a picture on its side and say so.
    const { width, height } = autoOrient;
    return { kind, width, height, bits: depth === 'ushort' ? 16 : 8, channels };
  } catch (error) {
    if (/pixel limit/i.test((error as Error).message))
      throw new ImageRefused('IMAGE_TOO_LARGE', `The picture has more than ${MAX_PIXELS / 1_000_000} million pixels. Export it at the detector's own size.`, { cause: error });
    throw new ImageRefused('IMAGE_TRUNCATED', 'The picture is damaged or was cut short on the way. Export the film again and send the new file.', { cause: error });
  }
}

/** The decoder forgives a missing end and a damaged chunk; the checksums of the format do not (PNG specification, section 5). Gives the chunks that hold pixels. */
function checkChunks(content: Buffer): Buffer[] {
  const pixels: Buffer[] = [];
  for (let at = 8; ; ) {
    if (at + 12 > content.length) throw new Error('the end is missing');
    const end = at + 8 + content.readUInt32BE(at);
    if (end + 4 > content.length) throw new Error('a chunk was cut short');
    if (crc32(content.subarray(at + 4, end)) !== content.readUInt32BE(end)) throw new Error('a chunk is damaged');
    const name = content.toString('latin1', at + 4, at + 8);
    if (name === 'IDAT') pixels.push(content.subarray(at + 8, end));
    if (name === 'IEND') return pixels;
    at = end + 4;
  }
}

const CHANNELS: Record<number, number> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
/** Of an interlaced picture: where each pass begins and how far it steps (PNG specification, section 8). */
const PASSES = [[0, 0, 8, 8], [4, 0, 8, 8], [0, 4, 4, 8], [2, 0, 4, 4], [0, 2, 2, 4], [1, 0, 2, 2], [0, 1, 1, 2]] as const;

/** How many bytes the pixels of the claimed size have, each row with the byte of its filter. */
function sizeOf(content: Buffer): number {
  const [width, height, bits, channels] = [content.readUInt32BE(16), content.readUInt32BE(20), content[24]!, CHANNELS[content[25]!] ?? 4];
  const rows = (w: number, h: number) => (w > 0 ? h * (1 + Math.ceil((w * bits * channels) / 8)) : 0);
  if (content[28] !== 1) return rows(width, height);
  return PASSES.reduce((sum, [x, y, dx, dy]) => sum + rows(Math.max(0, Math.ceil((width - x) / dx)), Math.max(0, Math.ceil((height - y) / dy))), 0);
}

/** How many bytes are there when all is unpacked. The decoder fills up what is missing, and does not say so every time. */
async function unpacked(pixels: Buffer[]): Promise<number> {
  let bytes = 0;
  for await (const part of Readable.from(pixels).compose(createInflate()) as AsyncIterable<Buffer>) {
    bytes += part.length;
    if (bytes > MAX_PIXELS * 8) break;
  }
  return bytes;
}
