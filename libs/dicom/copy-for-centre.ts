import { deIdentify, type Copy, type Disclosed } from './de-identify.js';
import { lettersFor, type Direction } from './orientation.js';
import { picturePixels } from './picture-pixels.js';
import { uncompressed } from './uncompressed.js';
import { regionOf } from './view-codes.js';
import { writeRadiograph } from './write-radiograph.js';

export interface ToldOfFilm extends Disclosed {
  view: { code: string; label: string; side: 'left' | 'right' | 'both' };
  /** YYYY-MM-DD, of the exposure: a picture does not carry it. */
  day: string;
  /** Of a compressed DICOM file, its pixels as plain numbers. */
  unpack?: boolean;
  /** Which film of its package this is, from 1. */
  instance: number;
  /** Of a PNG or JPEG: how large the detector's pixels are, and which way the picture lies, as people said. */
  stated?: { pixelMm: number; right: Direction; lower: Direction } | undefined;
}

/**
 * A stored film as a DICOM file for a centre, whatever it was stored as. A Digital X-Ray object must say how large its pixels are and which way
 * it lies, and a PNG or JPEG says neither. Where people have said both it is such an object; else it goes as what the standard has for such
 * pictures, a secondary capture, and nothing is made up. `content` must have passed `checkImage`.
 * @throws CannotUnpackError
 */
export async function copyForCentre(content: Buffer, kind: 'dicom' | 'png' | 'jpeg', told: ToldOfFilm): Promise<Copy> {
  if (kind === 'dicom') return deIdentify(told.unpack ? await uncompressed(content) : content, told);
  const { view, dog, day, instance, stated } = told;
  const radiograph = writeRadiograph({
    dog: { animalId: dog.number, issuer: '', name: '', owner: '', sex: dog.sex, neutered: dog.neutered, breed: dog.breed, transponders: [], studBook: [] },
    studyUid: '', seriesUid: stated ? 'pictures of known size' : 'pictures', accession: '', day, time: '', instance, region: regionOf(view.code), side: view.side, view, pixels: await picturePixels(content, kind), manufacturer: '',
    ...(stated && { spacing: [stated.pixelMm, stated.pixelMm], orientation: lettersFor(stated.right, stated.lower), exported: true }),
  });
  return deIdentify(radiograph, stated ? { ...told, derivation: DERIVATION } : told);
}

const DERIVATION = 'Exported pixel for pixel as a picture, as said by those who took it. Pixel spacing as stated for the detector, not measured.';
