import type { PageSentence } from '#libs/words/de/staff/page-words';
import { inside } from '../../design/format.js';
import type { SaidOption } from '../../design/Select.js';
import { t } from '../../words/t.js';

/** What is read beside a sleeping dog, in the order in which hands do it. */
export const measures = [
  { name: 'heartRate', label: 'Heart', unit: 'beats/min', decimals: 0 },
  { name: 'breaths', label: 'Breathing', unit: 'breaths/min', decimals: 0 },
  { name: 'spo2', label: 'Oxygen', unit: '%', decimals: 0 },
  { name: 'temperature', label: 'Temperature', unit: '°C', decimals: 1 },
] as const satisfies readonly { name: string; label: PageSentence; unit: PageSentence; decimals: number }[];
/** The colour of the gums; the word is also what is kept. */
export const gums: readonly SaidOption[] = [
  { id: 'pink', name: 'Pink' },
  { id: 'pale', name: 'Pale' },
  { id: 'blue', name: 'Blue' },
  { id: 'grey', name: 'Grey' },
  { id: 'not seen', name: 'Not seen' },
];

/** What was kept as a word of the list, or as somebody wrote it. */
export const gumsOf = (kept: unknown): string => {
  const known = gums.find((one) => one.id === kept);
  return known ? inside(t(known.name)) : String(kept ?? '');
};

export type Measure = (typeof measures)[number];

export interface Point { at: string; value: number; waits: boolean }

/** The values of one measure, oldest first; a reading that left it out is no point. */
export const pointsOf = (readings: readonly { at: string; values: Record<string, unknown>; waits?: boolean | undefined }[], name: Measure['name']): Point[] =>
  readings.flatMap(({ at, values, waits }) => (typeof values[name] === 'number' ? [{ at, value: values[name], waits: waits ?? false }] : []));

/** A key of the pad on what is typed so far: at most five characters, one point. */
export function withKey(typed: string, key: string): string {
  if (key === 'delete') return typed.slice(0, -1);
  if (key === '.' && (typed.includes('.') || typed === '')) return typed;
  return typed.length < 5 ? typed + key : typed;
}
