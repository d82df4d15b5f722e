import { CsvError, parse } from 'csv-parse/sync';
import { newBillLine, type NewBillLine } from '#libs/contracts/centre-bills';

export interface ReadCsv {
  rows: (NewBillLine & { row: number })[];
  errors: { row: number; words: string }[];
}

const HEADS: Record<keyof NewBillLine, string[]> = {
  reference: ['reference', 'number', 'order', 'accession', 'accession number', 'package'],
  study: ['study', 'protocol', 'examination'],
  amountMinor: ['amount', 'fee', 'price'],
};
const COLUMNS = 'The first row names the columns: reference, study, amount.';

/**
 * Lines of a bill from a spreadsheet's text, with commas, semicolons or tabs. A row that is wrong is told by its number
 * in the file, the row of the heads being 1, and what to do.
 */
export function readCsv(text: string): ReadCsv {
  const heads = text.replace(/^\uFEFF/, '').trimStart().split(/\r?\n/, 1)[0]!;
  const delimiter = ['\t', ';', ','].find((sign) => heads.includes(sign)) ?? ',';
  let records: { record: string[]; info: { lines: number } }[];
  try {
    records = parse(text, { delimiter, bom: true, trim: true, skip_empty_lines: true, relax_column_count: true, info: true }) as unknown as typeof records;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { rows: [], errors: [{ row: typeof error.lines === 'number' ? error.lines : 1, words: 'A quotation mark does not close, or stands in the middle. Correct it in the file.' }] };
  }
  const [head, ...rest] = records;
  const places = head && placesOf(head.record);
  if (!places) return { rows: [], errors: [{ row: 1, words: COLUMNS }] };
  if (rest.length === 0) return { rows: [], errors: [{ row: 2, words: 'There is no line below the heads.' }] };
  const read = rest.map(({ record, info }) => readRow(info.lines, record, places));
  return { rows: read.flatMap((r) => ('line' in r ? [{ row: r.row, ...r.line }] : [])), errors: read.flatMap((r) => ('words' in r ? [r] : [])) };
}

type Places = Record<keyof NewBillLine, number>;

function placesOf(head: string[]): Places | undefined {
  const at = (field: keyof NewBillLine) => head.findIndex((h) => HEADS[field].includes(h.toLowerCase()));
  const places = { reference: at('reference'), study: at('study'), amountMinor: at('amountMinor') };
  return Object.values(places).every((place) => place >= 0) ? places : undefined;
}

function readRow(row: number, record: string[], places: Places): { row: number; line: NewBillLine } | { row: number; words: string } {
  const amount = record[places.amountMinor] ?? '';
  if (!/^\d+([.,]\d{2})?$/.test(amount)) return { row, words: `“${amount}” is no amount. Write it like 58.00, without a currency and without signs between the thousands.` };
  const line = newBillLine.safeParse({ reference: record[places.reference] ?? '', study: record[places.study] ?? '', amountMinor: minorOf(amount) });
  return line.success ? { row, line: line.data } : { row, words: line.error.issues[0]!.message };
}

function minorOf(amount: string): number {
  const [whole = '0', part = '00'] = amount.split(/[.,]/);
  return Number(whole) * 100 + Number(part);
}
