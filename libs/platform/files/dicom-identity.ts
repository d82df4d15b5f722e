import type { DataSet } from 'dicom-parser';

/** What the file says about the dog, the day and the view; nothing here was checked against the order. */
export interface DicomIdentity {
  patientId: string | undefined;
  accessionNumber: string | undefined;
  /** YYYY-MM-DD. */
  studyDate: string | undefined;
  /** YYYY-MM-DD; the day of the exposure itself, where the machine wrote it. */
  acquisitionDate: string | undefined;
  modality: string | undefined;
  laterality: string | undefined;
  viewPosition: string | undefined;
  sopInstanceUid: string | undefined;
  /** Millimetres, rows then columns, and whether it is measured at the detector or corrected to the dog. */
  spacing: { millimetres: [number, number]; at: 'detector' | 'dog' } | undefined;
  exposureIndex: number | undefined;
  targetExposureIndex: number | undefined;
  deviationIndex: number | undefined;
}

export function dicomIdentity(data: DataSet): DicomIdentity {
  const text = (tag: string) => data.string(tag)?.trim() || undefined;
  const number = (tag: string) => {
    const value = data.floatString(tag);
    return value !== undefined && Number.isFinite(value) ? value : undefined;
  };
  return {
    patientId: text('x00100020'),
    accessionNumber: text('x00080050'),
    studyDate: day(text('x00080020')),
    acquisitionDate: day(text('x00080022')),
    modality: text('x00080060'),
    laterality: text('x00200062') ?? text('x00200060'),
    viewPosition: text('x00185101'),
    sopInstanceUid: text('x00080018'),
    spacing: spacing(data, 'x00280030', 'dog') ?? spacing(data, 'x00181164', 'detector'),
    exposureIndex: number('x00181411'),
    targetExposureIndex: number('x00181412'),
    deviationIndex: number('x00181413'),
  };
}

function day(value: string | undefined): string | undefined {
  const parts = /^(\d{4})(\d{2})(\d{2})$/.exec(value ?? '');
  if (!parts) return undefined;
  const written = `${parts[1]}-${parts[2]}-${parts[3]}`;
  const date = new Date(`${written}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(written) ? written : undefined;
}

function spacing(data: DataSet, tag: string, at: 'detector' | 'dog'): DicomIdentity['spacing'] {
  const [rows, columns] = [data.floatString(tag, 0), data.floatString(tag, 1)];
  return rows && columns && rows > 0 && columns > 0 ? { millimetres: [rows, columns], at } : undefined;
}
