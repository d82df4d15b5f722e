import sharp from 'sharp';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';

let drawn = 0;

/** A small picture that no other is equal to: a store by content would take two equal ones for one. */
export function aFilm(kind: 'png' | 'jpeg' = 'png'): Promise<Buffer> {
  drawn++;
  const shade = `<svg xmlns="http://www.w3.org/2000/svg" width="240" height="320"><rect width="240" height="320" fill="#222"/><circle cx="${60 + (drawn % 40)}" cy="160" r="30" fill="#bbb"/><text x="10" y="300" fill="#fff">L ${drawn}</text></svg>`;
  const picture = sharp(Buffer.from(shade)).greyscale();
  return (kind === 'png' ? picture.png() : picture.jpeg()).toBuffer();
}

/** A film of a machine, with the owner's name, the dog's and the practice's number in it. */
export function aDicomFilm({ animalId, day }: { animalId: string; day: string }): Buffer {
  drawn++;
  const values = new Uint16Array(64 * 48).map((_, i) => (i * 7 + drawn * 101) % 4096);
  return writeRadiograph({
    dog: { animalId, issuer: 'COTYLA', name: 'Calledname', owner: 'Ann Ownername', sex: 'female', neutered: false, breed: 'Karsby Spitz', transponders: [], studBook: [] },
    studyUid: newUid(), seriesUid: newUid(), accession: 'OURNUMBER', day, time: '10:11:12', instance: 1, region: 'hip', side: 'both', view: { code: 'vdExtended', label: 'Extended, from below' },
    orientation: ['LE', 'CD'], pixels: { rows: 48, columns: 64, bits: 12, values }, spacing: [0.14, 0.14], manufacturer: 'Invented X-ray',
  });
}

/** A picture of about a megabyte: noise does not let itself be made smaller. */
export function aNoisyFilm(): Promise<Buffer> {
  return sharp({ create: { width: 900, height: 1200, channels: 3, background: { r: 90, g: 90, b: 90 }, noise: { type: 'gaussian', mean: 100, sigma: 40 } } }).greyscale().png().toBuffer();
}
