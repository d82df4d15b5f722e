import { crc32 } from 'node:zlib';
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
    const { format, width, height, depth, channels } = await picture.metadata();
    if (format !== kind) throw new Error(`decoded as ${format}`);
    if (kind === 'png') checkChunks(content);
    await picture.stats(); // decodes every pixel, so a file that was cut short is found out
    return { kind, width, height, bits: depth === 'ushort' ? 16 : 8, channels };
  } catch (error) {
    if (/pixel limit/i.test((error as Error).message))
      throw new ImageRefused('IMAGE_TOO_LARGE', `The picture has more than ${MAX_PIXELS / 1_000_000} million pixels. Export it at the detector's own size.`, { cause: error });
    throw new ImageRefused('IMAGE_TRUNCATED', 'The picture is damaged or was cut short on the way. Export the film again and send the new file.', { cause: error });
  }
}

/** The decoder forgives a missing end and a damaged chunk; the checksums of the format do not (PNG specification, section 5). */
function checkChunks(content: Buffer): void {
  for (let at = 8; ; ) {
    if (at + 12 > content.length) throw new Error('the end is missing');
    const end = at + 8 + content.readUInt32BE(at);
    if (end + 4 > content.length) throw new Error('a chunk was cut short');
    if (crc32(content.subarray(at + 4, end)) !== content.readUInt32BE(end)) throw new Error('a chunk is damaged');
    if (content.toString('latin1', at + 4, at + 8) === 'IEND') return;
    at = end + 4;
  }
}
