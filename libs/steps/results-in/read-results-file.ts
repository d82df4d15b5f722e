import { MOST_ROWS, type StatedReading } from '#libs/contracts/results-in';
import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { Side } from '#libs/science/protocols/types';
import { readJoints, type JointCells } from './read-joints.js';
import { notAsWritten } from './as-written.js';
import { readTable } from './read-table.js';
import type { Line, SheetRead } from './table.js';
import { asCame, fieldNames, readStated, type AsCame, type Read } from './stated.js';

type Field = keyof StatedReading;
type Place = { field: Field } | { side: Side; part: 'value' | 'reason' } | { side: Side; finding: string };

const ALSO: Partial<Record<Field, string[]>> = { order: ['order number'], package: ['package number'], number: ['reading', 'reading number'], readBy: ['reader'], dogNumber: ['transponder'] };
const HEADS = said('The first row names the columns: package or order, number, read by, left, left reason, right, right reason; also study, film, read on, dog number, comment, and each finding with its side, such as “left arthrosis”.');
const GERMAN_DAY = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;

export interface ResultsRead {
  rows: Read[];
  /** Of a workbook, the sheet that was read. */
  sheet?: SheetRead;
}

/** Readings of a spreadsheet, a row each. What is wrong is told by its row in the file, the heads being row 1. */
export async function readResultsFile(bytes: Uint8Array): Promise<ResultsRead> {
  const table = await readTable(bytes);
  if ('told' in table) return { rows: [{ place: table.line, told: [table.told], said: [] }] };
  return { rows: readRows(table.lines), ...(table.sheet && { sheet: table.sheet }) };
}

function readRows([head, ...rows]: Line[]): Read[] {
  const wrong = (...told: Tellable[]): Read[] => [{ place: head?.line ?? 1, told, said: [] }];
  if (!head) return wrong(HEADS);
  const heads = head.cells.map(({ text }) => text);
  const places = heads.map(placeOf);
  const unknown = heads.filter((_, i) => places[i] === undefined);
  if (unknown.length > 0) return wrong(said('No column is called {names}.', { names: unknown.map((h) => `“${h.slice(0, 60)}”`).join(', ') }), HEADS);
  const twice = heads.find((h, i) => heads.findIndex((other) => plain(other) === plain(h)) !== i);
  if (twice !== undefined) return wrong(said('Two columns are called “{name}”. Keep one.', { name: twice.slice(0, 60) }));
  if (!places.some((p) => p && 'side' in p)) return wrong(HEADS);
  if (rows.length === 0) return wrong(said('There is no row below the heads.'));
  if (rows.length > MOST_ROWS) return wrong(said('There are {rows} rows. Take the file apart into files of at most {most}.', { rows: rows.length, most: MOST_ROWS }));
  return rows.map((row) => readRow(row, heads, places as Place[]));
}

function placeOf(head: string): Place | undefined {
  const name = plain(head);
  const field = (Object.keys(fieldNames) as Field[]).find((f) => plain(fieldNames[f]) === name || ALSO[f]?.includes(name));
  if (field) return { field };
  const [, side, rest] = /^(left|right)(?: (.+))?$/.exec(name) ?? [];
  if (!side) return undefined;
  if (rest === undefined || rest === 'value') return { side: side as Side, part: 'value' };
  return rest === 'reason' ? { side: side as Side, part: 'reason' } : { side: side as Side, finding: rest };
}

function readRow({ line: place, cells, wrong }: Line, heads: string[], places: Place[]): Read {
  const came: AsCame[] = heads.flatMap((head, i) => asCame(head, cells[i]?.text));
  if (wrong) return { place, said: came, told: [wrong] };
  const changed = places.flatMap((p, i) => notAsWritten(heads[i]!, 'field' in p ? p.field : undefined, cells[i]!));
  if (changed.length > 0) return { place, said: came, told: changed };
  const fields: Record<string, string> = {};
  const joints: Partial<Record<Side, JointCells>> = { left: emptyJoint(), right: emptyJoint() };
  places.forEach((p, i) => {
    const { text } = cells[i]!;
    if ('field' in p) { if (text !== '') fields[p.field] = p.field === 'readOn' ? isoDay(text) : text; }
    else if ('part' in p) joints[p.side]![p.part] = text;
    else joints[p.side]!.findings[p.finding] = text;
  });
  const read = readStated(fields);
  return 'told' in read ? { place, told: read.told, said: came } : { place, reading: read.reading, said: came, joints: (protocol) => readJoints(protocol, joints) };
}

const emptyJoint = (): JointCells => ({ value: '', reason: '', findings: {} });
const plain = (head: string): string => head.toLowerCase().replaceAll(/[\s_-]+/g, ' ').trim();
const isoDay = (text: string): string => text.replace(GERMAN_DAY, (_, d: string, m: string, y: string) => `${y}-${m.padStart(2, '0')}-${d.padStart(2, '0')}`);
