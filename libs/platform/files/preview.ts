import sharp, { type Sharp } from 'sharp';
import { dicomGrey } from './dicom-grey.js';
import { inEightBits } from './grey-window.js';
import type { CheckedImage } from './image-check.js';
import { MAX_PIXELS } from './picture-check.js';

export type NoPreview = 'COMPRESSED_DICOM' | 'COLOUR_DICOM' | 'BIG_ENDIAN_DICOM';
export type Preview =
  | { made: true; content: Buffer; contentType: 'image/jpeg'; width: number; height: number }
  | { made: false; reason: NoPreview; sentence: string };

const LONGEST = 1600;
const SENTENCES: Record<NoPreview, string> = {
  COMPRESSED_DICOM: 'No preview is made of a compressed DICOM file yet; the stored film itself is complete.',
  COLOUR_DICOM: 'No preview is made of a DICOM file in colour yet; the stored film itself is complete.',
  BIG_ENDIAN_DICOM: 'No preview is made of a DICOM file in this old byte order yet; the stored film itself is complete.',
};

/** A small picture to look at on screen, never to measure or to read from. `content` must have passed `checkImage`. */
export async function makePreview(content: Buffer, image: CheckedImage): Promise<Preview> {
  if (image.kind !== 'dicom') {
    const picture = sharp(content, { limitInputPixels: MAX_PIXELS }).autoOrient();
    return small(image.bits > 8 ? await spread(picture) : picture);
  }
  const reason = whyNot(image);
  if (reason) return { made: false, reason, sentence: SENTENCES[reason] };
  return small(fromGrey(dicomGrey(content), image));
}

/** Films of 12 bits kept in 16 would come out black. */
async function spread(picture: Sharp): Promise<Sharp> {
  const { data, info } = await picture.removeAlpha().toColourspace('grey16').raw({ depth: 'ushort' }).toBuffer({ resolveWithObject: true });
  const values = new Uint16Array(data.buffer, data.byteOffset, info.width * info.height);
  return fromGrey(inEightBits(values, { window: undefined, slope: 1, intercept: 0, inverted: false }), info);
}

const fromGrey = (grey: Buffer, { width, height }: { width: number; height: number }) => sharp(grey, { raw: { width, height, channels: 1 }, limitInputPixels: MAX_PIXELS });

function whyNot(image: Extract<CheckedImage, { kind: 'dicom' }>): NoPreview | undefined {
  if (image.compressed) return 'COMPRESSED_DICOM';
  if (image.channels !== 1) return 'COLOUR_DICOM';
  return image.transferSyntax === '1.2.840.10008.1.2.2' ? 'BIG_ENDIAN_DICOM' : undefined;
}

async function small(picture: Sharp): Promise<Preview> {
  const { data, info } = await picture
    .resize({ width: LONGEST, height: LONGEST, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#000' })
    .jpeg({ quality: 90 })
    .toBuffer({ resolveWithObject: true });
  return { made: true, content: data, contentType: 'image/jpeg', width: info.width, height: info.height };
}
