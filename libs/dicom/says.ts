import type { DataSet } from 'dicom-parser';
import { decoderFor } from './charsets.js';
import { dayOf, numberIn, textIn, textsIn } from './elements.js';
import { orientationOf, type Orientation } from './orientation.js';
import { spacingOf, type Spacing } from './spacing.js';

/** What the file says about the dog, the day and the view; nothing here was checked against the order. */
export interface Says {
  patientId: string | undefined;
  /** As written: family^given, of which a practice may have made anything. */
  patientName: string | undefined;
  species: string | undefined;
  breed: string | undefined;
  neutered: boolean | undefined;
  responsiblePerson: string | undefined;
  accessionNumber: string | undefined;
  /** YYYY-MM-DD. */
  studyDate: string | undefined;
  /** YYYY-MM-DD; the day of the exposure itself, where the machine wrote it. */
  acquisitionDate: string | undefined;
  modality: string | undefined;
  laterality: string | undefined;
  viewPosition: string | undefined;
  bodyPart: string | undefined;
  /** Codes and words that name the protocol or view, from wherever consoles put them. */
  procedures: string[];
  sopClassUid: string | undefined;
  sopInstanceUid: string | undefined;
  studyInstanceUid: string | undefined;
  seriesInstanceUid: string | undefined;
  spacing: Spacing | undefined;
  orientation: Orientation | undefined;
  exposureIndex: number | undefined;
  targetExposureIndex: number | undefined;
  deviationIndex: number | undefined;
  kv: number | undefined;
  mas: number | undefined;
  distanceCm: number | undefined;
}

export function says(data: DataSet): Says {
  const decoder = decoderFor(data.string('x00080005'));
  const text = (tag: string) => textIn(data, tag, decoder);
  const number = (tag: string) => numberIn(data, tag);
  const neutered = text('x00102203');
  const distance = number('x00181110');
  return {
    patientId: text('x00100020'),
    patientName: text('x00100010'),
    species: text('x00102201') ?? textsIn(data, ['x00102202', 'x00080104'], decoder)[0],
    breed: text('x00102292') ?? textsIn(data, ['x00102293', 'x00080104'], decoder)[0],
    neutered: neutered === 'ALTERED' ? true : neutered === 'UNALTERED' ? false : undefined,
    responsiblePerson: text('x00102297'),
    accessionNumber: text('x00080050'),
    studyDate: dayOf(text('x00080020')),
    acquisitionDate: dayOf(text('x00080022')),
    modality: text('x00080060'),
    laterality: text('x00200062') ?? text('x00200060'),
    viewPosition: text('x00185101'),
    bodyPart: text('x00180015'),
    procedures: [...new Set(PROCEDURES.flatMap((path) => textsIn(data, path, decoder)))],
    sopClassUid: text('x00080016'),
    sopInstanceUid: text('x00080018'),
    studyInstanceUid: text('x0020000d'),
    seriesInstanceUid: text('x0020000e'),
    spacing: spacingOf(data),
    orientation: orientationOf(data),
    exposureIndex: number('x00181411'),
    targetExposureIndex: number('x00181412'),
    deviationIndex: number('x00181413'),
    kv: number('x00180060'),
    mas: thousandth(number('x00181153')) ?? number('x00181152'),
    distanceCm: distance === undefined ? undefined : distance / 10,
  };
}

/** The protocol that was performed, the view, the protocol that was scheduled, and the words beside them. */
const PROCEDURES = [
  ['x00400260', 'x00080100'], ['x00400260', 'x00080104'],
  ['x00540220', 'x00080100'], ['x00540220', 'x00080104'],
  ['x00400275', 'x00400008', 'x00080100'], ['x00400275', 'x00400008', 'x00080104'], ['x00400275', 'x00400007'],
  ['x00181030'], ['x0008103e'], ['x00181400'],
];

/** Thousandths of a unit, as some elements are written. */
const thousandth = (value: number | undefined) => (value === undefined ? undefined : value / 1000);
