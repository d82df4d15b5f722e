import sharp, { type Sharp } from 'sharp';
import { inEightBits } from './grey-window.js';
import type { CheckedImage } from './check-image.js';
import { MAX_PIXELS } from './check-picture.js';
import { renderGrey } from './render-grey.js';
import { dicomSyntax } from './syntaxes.js';

export type NoPreview = 'KIND_NOT_SHOWN' | 'COLOUR_DICOM' | 'NOT_DECODED';
export type Preview =
  | { made: true; content: Buffer; contentType: 'image/jpeg'; width: number; height: number }
  | { made: false; reason: NoPreview; sentence: string };

const LONGEST = 1600;
const SENTENCES: Record<NoPreview, string> = {
  KIND_NOT_SHOWN: 'This kind of compressed DICOM file is kept whole, but cannot be shown here. To see it on this page, export it uncompressed.',
  COLOUR_DICOM: 'No preview is made of a DICOM file in colour yet; the stored film itself is complete.',
  NOT_DECODED: 'The image in this DICOM file could not be decoded, so nobody may be able to see it. Look at it on the X-ray system, and export it again.',
};

/** A small picture to look at on screen and to set points on for the room's own estimate, never to read from. `content` must have passed `checkImage`. */
export async function makePreview(content: Buffer, image: CheckedImage): Promise<Preview> {
  if (image.kind !== 'dicom') {
    const picture = sharp(content, { limitInputPixels: MAX_PIXELS }).autoOrient();
    return small(image.bits > 8 ? await spread(picture) : picture);
  }
  const reason = whyNot(image);
  if (reason) return none(reason);
  const grey = await renderGrey(content).catch(() => undefined);
  return grey ? small(fromGrey(grey, image)) : none('NOT_DECODED');
}

const none = (reason: NoPreview): Preview => ({ made: false, reason, sentence: SENTENCES[reason] });

/** Films of 12 bits kept in 16 would come out black. */
async function spread(picture: Sharp): Promise<Sharp> {
  const { data, info } = await picture.removeAlpha().toColourspace('grey16').raw({ depth: 'ushort' }).toBuffer({ resolveWithObject: true });
  const values = new Uint16Array(data.buffer, data.byteOffset, info.width * info.height);
  return fromGrey(inEightBits(values, { window: undefined, slope: 1, intercept: 0, inverted: false }), info);
}

const fromGrey = (grey: Buffer, { width, height }: { width: number; height: number }) => sharp(grey, { raw: { width, height, channels: 1 }, limitInputPixels: MAX_PIXELS });

function whyNot(image: Extract<CheckedImage, { kind: 'dicom' }>): NoPreview | undefined {
  const syntax = dicomSyntax(image.transferSyntax);
  if (syntax?.compressed && syntax.codec === 'none') return 'KIND_NOT_SHOWN';
  return image.channels === 1 ? undefined : 'COLOUR_DICOM';
}

async function small(picture: Sharp): Promise<Preview> {
  const { data, info } = await picture
    .resize({ width: LONGEST, height: LONGEST, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#000' })
    .jpeg({ quality: 90 })
    .toBuffer({ resolveWithObject: true });
  return { made: true, content: data, contentType: 'image/jpeg', width: info.width, height: info.height };
}
