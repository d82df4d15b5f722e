import type { DataSet } from 'dicom-parser';
import { newUid } from '#libs/dicom/uids';
import type { Radiograph } from '#libs/dicom/write-radiograph';
import { aRadiograph, shades } from './a-film.js';

let seed = 0;

/** The views that an answer of the worklist asks for. */
export const viewsOf = (answer: DataSet) => answer.elements.x00400100!.items![0]!.dataSet!.elements.x00400008!.items!.map(({ dataSet }) => ({ code: dataSet!.string('x00080100')!, label: dataSet!.string('x00080104')! }));

/** What the machine itself writes about the dog that was picked from its list; nobody types a number. */
export function picked(answer: DataSet, day: string, view: { code: string; label: string }, more: Partial<Radiograph> = {}): Radiograph {
  const bits = 12;
  return aRadiograph({
    dog: { ...aRadiograph().dog, animalId: answer.string('x00100020')! }, studyUid: answer.string('x0020000d')!, accession: answer.string('x00080050')!,
    day, view, sopUid: newUid(), pixels: { rows: 40, columns: 60, bits, values: shades(40, 60, bits).map((v) => (v + ++seed) % 4096) }, ...more,
  });
}
