import { buffer } from 'node:stream/consumers';
import { ZipFile } from 'yazl';

/** What stands in a cell: text, a number, nothing, a number that is shown by a format of `FORMATS`, or a cell's own XML with `ADDRESS` in it. */
export type Put = string | number | null | { number: number | string; shown: keyof typeof FORMATS } | { xml: string };

/** Codes of how numbers are shown, in the order in which cells name them. */
const FORMATS = { general: 'General', day: 'dd.mm.yyyy', moment: 'yyyy\\-mm\\-dd hh:mm', fifteen: '000000000000000', dear: '#,##0.00\\ "days"', red: '[Red]0.00' };
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const column = (n: number): string => (n > 26 ? column(Math.floor((n - 1) / 26)) : '') + String.fromCharCode(65 + ((n - 1) % 26));

function cell(put: Put, address: string): string {
  if (put === null) return '';
  if (typeof put === 'string') return `<c r="${address}" t="inlineStr"><is><t>${escaped(put)}</t></is></c>`;
  if (typeof put === 'number') return `<c r="${address}"><v>${put}</v></c>`;
  return 'xml' in put ? put.xml.replace('ADDRESS', address) : `<c r="${address}" s="${Object.keys(FORMATS).indexOf(put.shown)}"><v>${put.number}</v></c>`;
}

export const sheetOf = (rows: Put[][]): string =>
  `<worksheet xmlns="${MAIN}"><sheetData>${rows.map((cells, i) => `<row r="${i + 1}">${cells.map((put, n) => cell(put, `${column(n + 1)}${i + 1}`)).join('')}</row>`).join('')}</sheetData></worksheet>`;

/** The parts of a workbook, for a test to change one. Each sheet is its name and its XML; a name in brackets is hidden. */
export function partsOf(sheets: Record<string, string>, { texts = '' }: { texts?: string } = {}): Record<string, string> {
  const all = Object.entries(sheets);
  const relation = (id: string, type: string, target: string) => `<Relationship Id="${id}" Type="${RELATIONS}/${type}" Target="${target}"/>`;
  const relations = (inside: string) => `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inside}</Relationships>`;
  return {
    '[Content_Types].xml': `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>`,
    '_rels/.rels': relations(relation('rId1', 'officeDocument', 'xl/workbook.xml')),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><workbookPr/><sheets>${all.map(([name], i) => `<sheet name="${escaped(name)}" sheetId="${i + 1}" r:id="s${i}"${name.startsWith('(') ? ' state="hidden"' : ''}/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations(all.map((_, i) => relation(`s${i}`, 'worksheet', `worksheets/sheet${i + 1}.xml`)).join('') + relation('f', 'styles', 'styles.xml') + relation('t', 'sharedStrings', 'sharedStrings.xml')),
    'xl/styles.xml': `<styleSheet xmlns="${MAIN}"><numFmts>${Object.values(FORMATS).map((code, i) => `<numFmt numFmtId="${164 + i}" formatCode="${escaped(code)}"/>`).join('')}</numFmts><cellStyleXfs><xf numFmtId="14"/></cellStyleXfs><cellXfs>${Object.values(FORMATS).map((_, i) => `<xf numFmtId="${164 + i}"/>`).join('')}</cellXfs></styleSheet>`,
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}">${texts}</sst>`,
    ...Object.fromEntries(all.map(([, xml], i) => [`xl/worksheets/sheet${i + 1}.xml`, xml])),
  };
}

export function zipOf(parts: Record<string, string>, { compress = true } = {}): Promise<Buffer> {
  const zip = new ZipFile();
  for (const [name, text] of Object.entries(parts)) zip.addBuffer(Buffer.from(text), name, { compress });
  zip.end();
  return buffer(zip.outputStream as unknown as NodeJS.ReadableStream);
}

/** A workbook with these rows on its one sheet. */
export const workbookOf = (rows: Put[][]): Promise<Buffer> => zipOf(partsOf({ Readings: sheetOf(rows) }));
