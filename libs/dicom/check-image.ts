import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { checkDicom, type CheckedDicom } from './check-dicom.js';
import { ImageRefused } from './image-refused.js';
import { checkPicture, type CheckedPicture } from './check-picture.js';

export type CheckedImage = CheckedPicture | CheckedDicom;
type Kind = CheckedImage['kind'];

const NAMES: Record<Kind, string> = { dicom: 'a DICOM file', png: 'a PNG picture', jpeg: 'a JPEG picture' };
const EXTENSIONS: Record<string, Kind> = { '.dcm': 'dicom', '.dicom': 'dicom', '.dic': 'dicom', '.png': 'png', '.jpg': 'jpeg', '.jpeg': 'jpeg' };

/** Believes the content alone and reads all of it; throws ImageRefused. `fileName` is what the sender called the file. */
export async function checkImage(source: string | Buffer, fileName?: string): Promise<CheckedImage> {
  const content = typeof source === 'string' ? await readFile(source) : source;
  const kind = kindOf(content);
  if (!kind) throw new ImageRefused('NOT_AN_IMAGE', 'This is neither a DICOM file nor a PNG or JPEG picture. Export the film from the X-ray system as DICOM and send that file.');
  const extension = path.extname(fileName ?? '').toLowerCase();
  // X-ray systems often name files by the image's dotted number, whose last part only looks like an extension
  if (/^\.[a-z]/.test(extension) && EXTENSIONS[extension] !== kind)
    throw new ImageRefused('EXTENSION_DIFFERS', `The file is named "${extension}" but holds ${NAMES[kind]}. Export the film again and send it without renaming it.`);
  return kind === 'dicom' ? checkDicom(content) : checkPicture(content, kind);
}

function kindOf(content: Buffer): Kind | undefined {
  if (content.subarray(128, 132).toString('latin1') === 'DICM') return 'dicom';
  if (content.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))) return 'png';
  if (content.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff]))) return 'jpeg';
  return undefined;
}
