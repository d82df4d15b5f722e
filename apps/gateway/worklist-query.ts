import type { WorklistEntry } from '#libs/steps/gateway/worklist';
import { worklistAnswer } from './worklist-answer.js';

type Elements = Record<string, unknown>;

/** What a machine asks of the worklist (DICOM PS3.4 section K.6); undefined when it asks for nothing that could be understood. */
export interface WorklistQuery {
  from?: string;
  until?: string;
  station: string;
  modality: string;
  keys: Elements;
}

const MODALITIES = ['DX', 'CR', 'RG'];

export function readQuery(keys: Elements): WorklistQuery | undefined {
  const [step] = [keys.ScheduledProcedureStepSequence ?? []].flat() as Elements[];
  // Without its one required key this is no question, and must not be answered with everything.
  if (!step) return undefined;
  const days = said(step.ScheduledProcedureStepStartDate);
  const [from, until] = days.includes('-') ? days.split('-') : [days, days];
  return { ...dayKey('from', from), ...dayKey('until', until), station: said(step.ScheduledStationAETitle), modality: said(step.Modality), keys };
}

/** The entries that fit, each with every key that was asked for. */
export function answersTo(query: WorklistQuery, entries: WorklistEntry[], calling: string): Elements[] {
  if (!fits(query.station, calling)) return [];
  const modality = query.modality === '' || query.modality === '*' ? 'DX' : query.modality;
  if (!MODALITIES.includes(modality)) return [];
  return entries
    .map((entry) => worklistAnswer(entry, { station: calling, modality }))
    .filter((answer) => NAMED.every((key) => fits(said(query.keys[key]), said(answer[key]))))
    .map((answer) => ({ ...asked(query.keys), ...answer }));
}

const NAMED = ['PatientName', 'PatientID', 'AccessionNumber', 'RequestedProcedureID', 'StudyInstanceUID'];

/** Keys that nothing is known of come back empty. */
const asked = (keys: Elements): Elements => Object.fromEntries(Object.keys(keys).filter((key) => !key.startsWith('_')).map((key) => [key, Array.isArray(keys[key]) ? [] : '']));

/** A name may come as an object with its spellings. */
function said(value: unknown): string {
  const [first] = [value].flat();
  if (first !== null && typeof first === 'object') return said((first as Elements).Alphabetic);
  return typeof first === 'string' ? first.trim() : typeof first === 'number' ? String(first) : '';
}

/** Empty asks for all; * stands for any signs and ? for one, and great letters are as small ones. */
function fits(pattern: string, value: string): boolean {
  if (pattern === '') return true;
  const source = pattern.replace(/[.+^${}()|[\]\\]/g, '\\$&').replace(/\*+/g, '.*').replace(/\?/g, '.');
  return new RegExp(`^${source}$`, 'i').test(value);
}

function dayKey(name: 'from' | 'until', value: string | undefined): { from?: string; until?: string } {
  const parts = /^(\d{4})(\d{2})(\d{2})$/.exec(value?.trim() ?? '');
  return parts ? { [name]: `${parts[1]}-${parts[2]}-${parts[3]}` } : {};
}
