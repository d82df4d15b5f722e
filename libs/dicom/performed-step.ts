import { dayOf } from './elements.js';
import { isUid } from './uids.js';

/** DICOM PS3.4 annex F.7: what a machine says about its own work. */
export const PERFORMED_STEP = '1.2.840.10008.3.1.2.3.3';

const STATES = { 'IN PROGRESS': 'inProgress', COMPLETED: 'completed', DISCONTINUED: 'discontinued' } as const;
export type PerformedState = (typeof STATES)[keyof typeof STATES];

/** As the machine said it: nothing of it was checked, and nothing of it replaces what a person wrote down. */
export interface PerformedSaid {
  /** On the machine's own clock, YYYY-MM-DDTHH:MM. */
  started?: string;
  ended?: string;
  what?: string;
  /** Why it was broken off. */
  reason?: string;
  patientId?: string;
  accessionNumber?: string;
  exposures?: number;
  /** dGy·cm², as the standard counts it. */
  areaDose?: number;
  /** mGy */
  entranceDose?: number;
  distanceCm?: number;
  each?: { kv?: number; mas?: number }[];
  /** Numbers of the images that it made. */
  images?: string[];
}

/** The numbers by which a step finds its order. */
export interface StepNumbers { studyInstanceUid: string | undefined; accessionNumber: string | undefined; scheduledStep: string | undefined }

type Elements = Record<string, unknown>;

export function performedState(elements: Elements): PerformedState | 'unknown' | undefined {
  const said = text(elements.PerformedProcedureStepStatus);
  return said === undefined ? undefined : (STATES[said as keyof typeof STATES] ?? 'unknown');
}

export function stepNumbers(elements: Elements): StepNumbers {
  const [scheduled = {}] = items(elements.ScheduledStepAttributesSequence);
  return { studyInstanceUid: uid(scheduled.StudyInstanceUID), accessionNumber: text(scheduled.AccessionNumber), scheduledStep: text(scheduled.ScheduledProcedureStepID) };
}

const MOST = 500;

export function readPerformed(elements: Elements): PerformedSaid {
  const series = items(elements.PerformedSeriesSequence);
  const images = series.flatMap((one) => items(one.ReferencedImageSequence)).flatMap((image) => uid(image.ReferencedSOPInstanceUID) ?? []);
  const each = items(elements.ExposureDoseSequence).map(oneExposure).filter((one) => Object.keys(one).length > 0);
  const distance = number(elements.DistanceSourceToDetector);
  // the older element counts in dGy
  const decigray = number(elements.EntranceDose);
  return told({
    started: moment(elements.PerformedProcedureStepStartDate, elements.PerformedProcedureStepStartTime),
    ended: moment(elements.PerformedProcedureStepEndDate, elements.PerformedProcedureStepEndTime),
    what: text(elements.PerformedProcedureStepDescription) ?? text(series[0]?.ProtocolName),
    reason: items(elements.PerformedProcedureStepDiscontinuationReasonCodeSequence).flatMap((code) => text(code.CodeMeaning) ?? [])[0],
    patientId: text(elements.PatientID),
    accessionNumber: stepNumbers(elements).accessionNumber,
    exposures: number(elements.TotalNumberOfExposures),
    areaDose: number(elements.ImageAndFluoroscopyAreaDoseProduct),
    entranceDose: number(elements.EntranceDoseInmGy) ?? (decigray === undefined ? undefined : decigray * 100),
    distanceCm: distance === undefined ? undefined : distance / 10,
    each: each.length > 0 ? each.slice(0, MOST) : undefined,
    images: images.length > 0 ? [...new Set(images)].slice(0, MOST) : undefined,
  });
}

/** Milliampere-seconds as they stand there, or as current times time. */
function oneExposure(item: Elements): { kv?: number; mas?: number } {
  const [current, time] = [number(item.XRayTubeCurrentInuA), number(item.ExposureTime)];
  const micro = number(item.ExposureInuAs);
  const product = current === undefined || time === undefined ? undefined : (current * time) / 1e6;
  return told({ kv: number(item.KVP), mas: number(item.Exposure) ?? (micro === undefined ? product : micro / 1000) });
}

const told = <T extends object>(value: { [K in keyof T]: T[K] | undefined }): T => Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
const items = (value: unknown): Elements[] => [value ?? []].flat().filter((item): item is Elements => typeof item === 'object' && item !== null);

function text(value: unknown): string | undefined {
  const [first] = [value].flat();
  const words = typeof first === 'number' ? String(first) : typeof first === 'string' ? first.replace(/\0/g, '').trim() : '';
  return words === '' ? undefined : words.slice(0, 200);
}

function uid(value: unknown): string | undefined {
  const said = text(value);
  return isUid(said) ? said : undefined;
}

function number(value: unknown): number | undefined {
  const said = text(value);
  return said !== undefined && Number.isFinite(Number(said)) && Number(said) >= 0 ? Number(said) : undefined;
}

function moment(day: unknown, time: unknown): string | undefined {
  const date = dayOf(text(day));
  const clock = /^([01]\d|2[0-3])([0-5]\d)/.exec(text(time) ?? '');
  return date && clock ? `${date}T${clock[1]}:${clock[2]}` : undefined;
}
