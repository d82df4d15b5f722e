import type { StoredFact } from '../record/order-record.js';
import { happenedLine } from '../order-screen/happened.js';
import type { Work } from '../record/work.js';

export interface RecordTable {
  /** The CSV is called so. */
  file: string;
  title: string;
  head: string[];
  widths: number[];
  rows: (string | number | null)[][];
}

type Seen = Pick<Work, 'facts' | 'evaluation' | 'order'>;
const cell = (value: unknown): string | number | null => (typeof value === 'number' || typeof value === 'string' ? value : value == null ? null : JSON.stringify(value));

/** Readings, drugs with their batches, and everything with who and when: as written down, late entries marked. */
export function recordTables({ facts, evaluation, order }: Seen, names: Record<string, string>, write: (at: string) => string): RecordTable[] {
  const late = new Set(evaluation.order.late);
  const ends = (f: StoredFact | (StoredFact & object)) => [f.byName, write(f.rec), late.has(f.id) ? 'late' : ''];
  const stored = <T>(all: T[]) => all as (T & StoredFact)[];
  const before = (f: StoredFact) => late.has(f.id);
  const history = (rows: StoredFact[]) => rows.map((f) => [write(f.at), happenedLine(f, names), ...ends(f)]);
  const HISTORY = ['When', 'What', 'By', 'Written down', 'Late'];
  return [
    {
      file: 'readings', title: 'Readings', head: ['When', 'Device', 'No.', 'Heart /min', 'Breaths /min', 'SpO2 %', 'Temp. °C', 'Gums', 'Note', 'By', 'Written down', 'Late'], widths: [17, 9, 5, 8, 10, 8, 8, 9, 10, 13, 17, 6],
      rows: stored(facts('readingTaken')).map((f) => [write(f.at), f.device, f.n, ...['heartRate', 'breaths', 'spo2', 'temperature', 'gums', 'note'].map((k) => cell(f.detail?.[k])), ...ends(f)]),
    },
    {
      file: 'drugs', title: 'Drugs and batches', head: ['When', 'What', 'Drug', 'Batch', 'mL', 'Route', 'By', 'Written down', 'Late'], widths: [18, 9, 20, 12, 6, 10, 14, 18, 6],
      rows: stored(facts('drugRecorded')).map((f) => [write(f.at), f.event, cell(f.detail?.drug), f.batch, cell(f.detail?.amountMl), cell(f.detail?.route), ...ends(f)]),
    },
    { file: 'late', title: 'Written down after the record was frozen', head: HISTORY, widths: [18, 50, 16, 18, 6], rows: history(order.facts.filter(before)) },
    { file: 'history', title: 'Everything that was written down', head: HISTORY, widths: [18, 50, 16, 18, 6], rows: history(order.facts) },
  ];
}
