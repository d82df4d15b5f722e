import { isUtf8 } from 'node:buffer';
import { CsvError, parse } from 'csv-parse/sync';

/** Rows of text with their line in the file. */
export type Table = { lines: { line: number; cells: string[] }[] } | { line: number; words: string };

/**
 * A spreadsheet's text: commas, semicolons or tabs; UTF-8 or UTF-16 with their marks, UTF-8 without one, else
 * windows-1252, which holds all of Latin-1.
 */
export function readTable(bytes: Uint8Array): Table {
  if (bytes.length >= 4 && bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3) return { line: 1, words: 'This is a workbook (xlsx), and a file of text is wanted. In the spreadsheet choose “Save as”, then CSV, and send that file.' };
  const text = textOf(bytes);
  if (text.includes('\0')) return { line: 1, words: 'This is no file of text. In the spreadsheet choose “Save as”, then CSV, and send that file.' };
  try {
    const rows = parse(text, { delimiter: delimiterOf(text), bom: true, trim: true, skip_empty_lines: true, relax_column_count: true, info: true }) as unknown as { record: string[]; info: { lines: number } }[];
    return { lines: rows.map(({ record, info }) => ({ line: info.lines, cells: record })).filter(({ cells }) => cells.some((c) => c !== '')) };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { line: typeof error.lines === 'number' ? error.lines : 1, words: 'A quotation mark does not close, or stands in the middle of a cell. Correct it in the file.' };
  }
}

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
