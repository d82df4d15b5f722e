import { said } from '#libs/words/said';
import type { Cell } from '../table.js';
import type { Format } from './formats.js';
import { plainText } from './text-runs.js';
import { damaged } from './unreadable.js';

export interface Book { texts: string[]; formats: Format[]; from1904: boolean }

/** A cell's marks in its sheet. */
export interface Stored { type: string; format: Format | undefined; formula: boolean; hasValue: boolean }

/** What a cell says, from its stored value alone. */
export function cellOf({ type, format, formula, hasValue }: Stored, value: string, book: Book): Cell {
  if (formula && !hasValue) return { text: '', wrong: said('its formula has no stored result. Write the value itself, or save the file in the spreadsheet, where it is worked out.') };
  if (!hasValue || value === '') return { text: '' };
  if (type === 's') return { text: shared(value, book.texts) };
  if (type === 'inlineStr' || type === 'str') return { text: plainText(value) };
  if (type === 'b') return { text: value === '1' ? 'true' : 'false' };
  if (type === 'd') return { text: value.replace(/T00:00(:00(\.0+)?)?Z?$/, ''), stored: 'day' };
  if (type === 'e') return { text: '', wrong: said('it holds the spreadsheet’s error {error}. Correct it in the spreadsheet.', { error: value.slice(0, 20) }) };
  return numberOf(value, format, book.from1904);
}

function shared(value: string, texts: string[]): string {
  const text = texts[Number(value)];
  if (text === undefined) throw damaged();
  return text;
}

/** The shortest number that is stored the same is what was typed: spreadsheets write 0.41 as 0.40999999999999998. */
function numberOf(value: string, format: Format | undefined, from1904: boolean): Cell {
  const number = Number(value);
  if (!Number.isFinite(number)) throw damaged();
  const day = format?.day ? dayOf(number, from1904) : undefined;
  return day === undefined ? { text: String(number).padStart(format?.zeros ?? 0, '0'), stored: 'number' } : { text: day, stored: 'day' };
}

const DAY_MS = 86_400_000;
/** Before March 1900 spreadsheets count a day that never was. */
const [FIRST, LAST] = [61, 2_958_465];

/** Days are counted from the turn of 1900 or of 1904. */
function dayOf(count: number, from1904: boolean): string | undefined {
  if (count < (from1904 ? 0 : FIRST) || count > LAST) return undefined;
  const moment = new Date(Math.round((from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30)) + count * DAY_MS)).toISOString();
  return Number.isInteger(count) ? moment.slice(0, 10) : moment.slice(0, 16).replace('T', ' ');
}
