import { deIdentify, type Copy, type Disclosed } from './de-identify.js';
import { picturePixels } from './picture-pixels.js';
import { regionOf } from './view-codes.js';
import { writeRadiograph } from './write-radiograph.js';

export interface ToldOfFilm extends Disclosed {
  view: { code: string; label: string; side: 'left' | 'right' | 'both' };
  /** YYYY-MM-DD, of the exposure: a picture does not carry it. */
  day: string;
  /** Which film of its package this is, from 1. */
  instance: number;
}

/**
 * A stored film as a DICOM file for a centre, whatever it was stored as. Of a PNG or JPEG nobody knows how large its pixels are, and a Digital
 * X-Ray object must say it; so it goes as what the standard has for such pictures, a secondary capture, and no size is made up.
 * `content` must have passed `checkImage`.
 */
export async function copyForCentre(content: Buffer, kind: 'dicom' | 'png' | 'jpeg', told: ToldOfFilm): Promise<Copy> {
  if (kind === 'dicom') return deIdentify(content, told);
  const { view, dog, day, instance } = told;
  const radiograph = writeRadiograph({
    dog: { animalId: dog.number, issuer: '', name: '', owner: '', sex: dog.sex, neutered: dog.neutered, breed: dog.breed, transponders: [], studBook: [] },
    studyUid: '', seriesUid: 'pictures', accession: '', day, time: '', instance, region: regionOf(view.code), side: view.side, view, pixels: await picturePixels(content, kind), manufacturer: '',
  });
  return deIdentify(radiograph, told);
}
