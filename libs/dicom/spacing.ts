import type { DataSet } from 'dicom-parser';
import { numberIn } from './elements.js';

export interface Spacing {
  /** Millimetres, rows then columns. 0 where the file holds no number; a wrong size is told to whoever measures. */
  millimetres: [number, number];
  /** At the detector's front; corrected to the dog; or unknown, where the file gives a size and not of what. */
  at: 'detector' | 'dog' | 'unknown';
  /** By an object of known size in the picture, or by the geometry of the room alone. */
  calibrated?: 'fiducial' | 'geometry';
}

const [PATIENT, DETECTOR, CALIBRATION] = ['x00280030', 'x00181164', 'x00280a02'];

/** DICOM PS3.3 section 10.7.1: two equal sizes say that nothing was corrected; two that differ, that the first one was. */
export function spacingOf(data: DataSet): Spacing | undefined {
  const [patient, detector] = [sizeIn(data, PATIENT), sizeIn(data, DETECTOR)];
  if (!patient) return detector && { millimetres: detector, at: 'detector' };
  const calibration = data.string(CALIBRATION)?.trim();
  if (calibration === 'FIDUCIAL' || calibration === 'GEOMETRY') return { millimetres: patient, at: 'dog', calibrated: calibration === 'FIDUCIAL' ? 'fiducial' : 'geometry' };
  if (!detector) return { millimetres: patient, at: 'unknown' };
  return { millimetres: patient, at: patient.every((mm, i) => mm === detector[i]) ? 'detector' : 'dog' };
}

function sizeIn(data: DataSet, tag: string): [number, number] | undefined {
  return data.string(tag)?.trim() ? [numberIn(data, tag) ?? 0, numberIn(data, tag, 1) ?? 0] : undefined;
}
