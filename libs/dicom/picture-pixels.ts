import sharp from 'sharp';
import { MAX_PIXELS } from './check-picture.js';
import type { Radiograph } from './write-radiograph.js';

/** The grey values of a PNG or JPEG that passed `checkPicture`, with as many bits as the picture has. */
export async function picturePixels(content: Buffer, kind: 'png' | 'jpeg'): Promise<Radiograph['pixels']> {
  const picture = sharp(content, { limitInputPixels: MAX_PIXELS }).autoOrient().removeAlpha();
  const deep = (await picture.metadata()).depth === 'ushort';
  const { data, info } = deep
    ? await picture.toColourspace('grey16').raw({ depth: 'ushort' }).toBuffer({ resolveWithObject: true })
    : await picture.toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  const values = deep ? new Uint16Array(data.buffer.slice(data.byteOffset, data.byteOffset + data.byteLength)) : new Uint8Array(data);
  const size = { rows: info.height, columns: info.width, bits: deep ? 16 : 8, values };
  return kind === 'jpeg' ? { ...size, lossy: { ratio: values.byteLength / content.length } } : size;
}
