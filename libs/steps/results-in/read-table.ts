import { isUtf8 } from 'node:buffer';
import { CsvError, parse } from 'csv-parse/sync';
import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { Table } from './table.js';
import { readWorkbook } from './workbook/read-workbook.js';

const ZIP = [0x50, 0x4b];
const OLD_WORKBOOK = [0xd0, 0xcf, 0x11, 0xe0];

/** A workbook, or a spreadsheet's text: told apart by what is in it, whatever its name. */
export async function readTable(bytes: Uint8Array): Promise<Table> {
  const begins = (signs: number[]) => signs.every((sign, i) => bytes[i] === sign);
  if (begins(OLD_WORKBOOK)) return { line: 1, told: oldWorkbook(bytes) };
  // No text has the third sign of a zip.
  return begins(ZIP) && bytes[2]! < 9 ? readWorkbook(bytes) : readText(bytes);
}

/** A workbook with a password is wrapped in the same kind of file as one of before 2007. */
function oldWorkbook(bytes: Uint8Array): Tellable {
  return Buffer.from(bytes).includes(Buffer.from('EncryptedPackage', 'utf16le'))
    ? said('The workbook is locked with a password. Open it in the spreadsheet, take the password off, save it, and send that file.')
    : said('This is a workbook of the old kind (xls). In the spreadsheet choose “Save as”, then xlsx or CSV, and send that file.');
}

/**
 * Commas, semicolons or tabs; UTF-8 or UTF-16 with their marks, UTF-8 without one, else windows-1252, which holds all of
 * Latin-1.
 */
function readText(bytes: Uint8Array): Table {
  const text = textOf(bytes);
  if (text.includes('\0')) return { line: 1, told: said('This is no file of text and no workbook. In the spreadsheet choose “Save as”, then xlsx or CSV, and send that file.') };
  try {
    const rows = parse(text, { delimiter: delimiterOf(text), bom: true, trim: true, skip_empty_lines: true, relax_column_count: true, info: true }) as unknown as { record: string[]; info: { lines: number } }[];
    const filled = rows.filter(({ record }) => record.some((c) => c !== ''));
    const heads = filled[0]?.record.length ?? 0;
    return { lines: filled.map(({ record, info }) => ({ line: info.lines, cells: record.map((cell) => ({ text: cell })), ...otherLength(record.length, heads) })) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { line: typeof error.lines === 'number' ? error.lines : 1, told: said('A quotation mark does not close, or stands in the middle of a cell. Correct it in the file.') };
  }
}

/** A decimal comma in a file of commas makes a cell too many: nothing may slide into the next column unseen. */
const otherLength = (cells: number, heads: number): { wrong?: Tellable } =>
  cells === heads ? {} : { wrong: said('This row has {cells} cells and the heads have {heads}. With commas between the cells, a number with a decimal comma stands in quotation marks: "0,41".', { cells, heads }) };

function textOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  return new TextDecoder(isUtf8(bytes) ? 'utf-8' : 'windows-1252').decode(bytes);
}

/** By the heads, which hold no sign of another kind than their own. */
function delimiterOf(text: string): string {
  const heads = text.trimStart().split(/\r?\n/, 1)[0]!;
  return ['\t', ';', ','].find((sign) => heads.includes(sign)) ?? ',';
}
