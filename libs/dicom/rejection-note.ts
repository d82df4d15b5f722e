import { disclosedDog, type DisclosedDog } from './disclosed-dog.js';
import { dicomDay } from './dog-attributes.js';
import { part10Header } from './part10.js';
import type { Part } from './parts.js';
import { EXPLICIT } from './syntaxes.js';
import { codes, words, writeParts } from './write-parts.js';

const KEY_OBJECT_SELECTION = '1.2.840.10008.5.1.4.1.1.88.59';
const dcm = (value: string, meaning: string) => ({ value, scheme: 'DCM', meaning });

/** Why a film that was sent is not to be used (DICOM PS3.16, context group 7010): it is poor, it may harm (as when it is of another dog), it stands under a wrong order, or it is no longer to be kept. */
export const REJECTIONS = {
  quality: dcm('113001', 'Rejected for Quality Reasons'),
  safety: dcm('113037', 'Rejected for Patient Safety Reasons'),
  wrongOrder: dcm('113038', 'Incorrect Modality Worklist Entry'),
  expired: dcm('113039', 'Data Retention Policy Expired'),
} as const;

/** What was poor about it (DICOM PS3.16, context group 7011). */
export const POOR = {
  positioning: dcm('111209', 'Positioning'),
  blur: dcm('111210', 'Motion blur'),
  underExposed: dcm('111211', 'Under exposed'),
  overExposed: dcm('111212', 'Over exposed'),
  doubleExposed: dcm('113026', 'Double exposure'),
  grid: dcm('111208', 'Grid artifact(s)'),
  artifact: dcm('111207', 'Image artifact(s)'),
  noImage: dcm('111213', 'No image'),
  other: dcm('111220', 'Other failure'),
} as const;

export interface RejectionNote extends DisclosedDog {
  why: keyof typeof REJECTIONS;
  /** For `quality` alone. */
  poor?: keyof typeof POOR;
  /** In a sentence, to whoever reads it there; nobody is named in it. */
  words?: string;
  /** The films as they were sent: all of one study. */
  films: { sopClassUid: string; sopInstanceUid: string; seriesUid: string }[];
  studyUid: string;
  /** The note's own; the same note has the same ones however often it is sent. */
  sopInstanceUid: string;
  seriesUid: string;
  /** YYYY-MM-DD of the films, and YYYY-MM-DD and HH:MM:SS of the note. */
  imagedOn: string;
  day: string;
  time: string;
}

/** A key object selection document (DICOM PS3.3 A.35.4, template 2010) that says of films in an archive that they are not to be used, and why (IHE, Imaging Object Change Management). The archive keeps or hides them by its own rules. */
export function rejectionNote(note: RejectionNote): Buffer {
  const { films, why, poor, studyUid, sopInstanceUid, seriesUid, day, time } = note;
  if (films.length === 0) throw new RangeError('a note rejects at least one film');
  const [at, on] = [time.replaceAll(':', ''), dicomDay(day)];
  const parts: Part[] = [
    words('x00080005', 'CS', 'ISO_IR 192'), words('x00080016', 'UI', KEY_OBJECT_SELECTION), words('x00080018', 'UI', sopInstanceUid),
    ...disclosedDog(note), words('x00080020', 'DA', dicomDay(note.imagedOn)), words('x00080030', 'TM', ''), words('x0020000d', 'UI', studyUid),
    words('x00080060', 'CS', 'KO'), words('x0020000e', 'UI', seriesUid), words('x00200011', 'IS', '9001'), sequence('x00081111'), words('x00080070', 'LO', 'Cotyla'),
    words('x00080023', 'DA', on), words('x00080033', 'TM', at), words('x00200013', 'IS', '1'),
    sequence('x0040a375', [words('x0020000d', 'UI', studyUid), sequence('x00081115', ...inSeries(films))]),
    words('x0040a040', 'CS', 'CONTAINER'), codes('x0040a043', REJECTIONS[why]), words('x0040a050', 'CS', 'SEPARATE'),
    sequence('x0040a504', [words('x00080105', 'CS', 'DCMR'), words('x0040db00', 'CS', '2010')]),
    sequence('x0040a730',
      ...(why === 'quality' ? [[words('x0040a010', 'CS', 'HAS CONCEPT MOD'), words('x0040a040', 'CS', 'CODE'), codes('x0040a043', dcm('113011', 'Document Title Modifier')), codes('x0040a168', POOR[poor ?? 'other'])]] : []),
      ...(note.words ? [[words('x0040a010', 'CS', 'CONTAINS'), words('x0040a040', 'CS', 'TEXT'), codes('x0040a043', dcm('113012', 'Key Object Description')), { tag: 'x0040a160', vr: 'UT', value: Buffer.from(note.words) }]] : []),
      ...films.map((film) => [sequence('x00081199', reference(film)), words('x0040a010', 'CS', 'CONTAINS'), words('x0040a040', 'CS', 'IMAGE')])),
  ];
  return Buffer.concat([part10Header({ sopClassUid: KEY_OBJECT_SELECTION, sopInstanceUid, transferSyntax: EXPLICIT }), writeParts(parts)]);
}

const sequence = (tag: string, ...items: Part[][]): Part => ({ tag, vr: 'SQ', value: items });
const reference = ({ sopClassUid, sopInstanceUid }: RejectionNote['films'][number]): Part[] => [words('x00081150', 'UI', sopClassUid), words('x00081155', 'UI', sopInstanceUid)];

function inSeries(films: RejectionNote['films']): Part[][] {
  return [...new Set(films.map((film) => film.seriesUid))].map((series) =>
    [sequence('x00081199', ...films.filter((film) => film.seriesUid === series).map(reference)), words('x0020000e', 'UI', series)]);
}
