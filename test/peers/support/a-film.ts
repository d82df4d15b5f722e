import type { Radiograph } from '#libs/dicom/write-radiograph';
import { newUid } from '#libs/dicom/uids';

/** Rows of slowly rising values with a step in them: every codec has something to do, and a shift of one byte is seen. */
export function shades(rows: number, columns: number, bits: number): Uint16Array | Uint8Array {
  const values = bits > 8 ? new Uint16Array(rows * columns) : new Uint8Array(rows * columns);
  for (let y = 0; y < rows; y++) for (let x = 0; x < columns; x++) values[y * columns + x] = (x * 13 + y * 7 + (x > columns / 2 ? 2 ** (bits - 1) : 0)) % 2 ** bits;
  return values;
}

/** A radiograph of a dog that does not exist. */
export function aRadiograph(more: Partial<Radiograph> = {}): Radiograph {
  return {
    dog: { animalId: 'D-000123', issuer: 'COTYLA', name: 'Heron', owner: 'Ann Wist', born: '2024-01-02', sex: 'female', neutered: false, breed: 'Karsby Spitz', transponders: ['999000000000123'], studBook: [{ book: 'Karsby', number: 'K 77' }] },
    studyUid: newUid(), seriesUid: newUid(), accession: 'AR26-00417-9', day: '2026-11-29', time: '10:11:12', instance: 1, region: 'hip', side: 'both',
    view: { code: 'vdExtended', label: 'Extended, from below' }, orientation: ['LE', 'CD'], pixels: { rows: 120, columns: 160, bits: 12, values: shades(120, 160, 12) }, spacing: [0.14, 0.14], manufacturer: 'Invented X-ray',
    ...more,
  };
}
