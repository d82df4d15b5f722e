import { partsOf, sheetOf, workbookOf, zipOf, type Put } from '#test/support/workbook';
import { inPlainEnglish, type Tellable } from '#libs/words/said-error';
import { readTable } from '../read-table.js';

/** What is wrong, as it is told in English. */
const inWords = <T extends { wrong?: Tellable }>(of: T) => (of.wrong ? { ...of, wrong: inPlainEnglish(of.wrong) } : of);
const read = async (content: Buffer | Promise<Buffer>) => {
  const table = await readTable(await content);
  return 'told' in table ? table : { ...table, lines: table.lines.map(inWords) };
};
/** What the second row says under one head. */
async function said(put: Put, parts: (all: Record<string, string>) => Record<string, string> = (all) => all) {
  const table = await read(zipOf(parts(partsOf({ Readings: sheetOf([['left'], [put]]) }, { texts: '<si><t>plain</t></si><si><r><t xml:space="preserve">rich </t></r><r><rPr><b/></rPr><t>text</t></r><rPh sb="0" eb="1"><t>spoken</t></rPh></si>' }))));
  if ('told' in table) throw new Error(inPlainEnglish(table.told));
  const cell = table.lines[1]?.cells[0];
  return cell && inWords(cell);
}
const words = async (content: Buffer | Promise<Buffer>): Promise<string> => {
  const table = await read(content);
  return 'told' in table ? inPlainEnglish(table.told) : `${table.lines.length} rows were read`;
};

describe('a cell of a workbook', () => {
  it.each<[string, Put, object | undefined]>([
    ['a text in its cell', 'Jörg & <Co>', { text: 'Jörg & <Co>' }],
    ['a text from the list', { xml: '<c r="ADDRESS" t="s"><v>0</v></c>' }, { text: 'plain' }],
    ['a text in several letters, without how it is spoken', { xml: '<c r="ADDRESS" t="s"><v>1</v></c>' }, { text: 'rich text' }],
    ['a text with signs that XML cannot hold', 'a_x000A_b_x0000_c', { text: 'a\nb\ufffdc' }],
    ['a number as it was typed', { number: '0.40999999999999998', shown: 'general' }, { text: '0.41', stored: 'number' }],
    ['a number with its exponent', { number: '9.00000000000001E+14', shown: 'general' }, { text: '900000000000001', stored: 'number' }],
    ['a number in red', { number: 0.5, shown: 'red' }, { text: '0.5', stored: 'number' }],
    ['a number with a word beside it', { number: 3, shown: 'dear' }, { text: '3', stored: 'number' }],
    ['a number shown with zeros before it', { number: 40981000000001, shown: 'fifteen' }, { text: '040981000000001', stored: 'number' }],
    ['a day', { number: 46356, shown: 'day' }, { text: '2026-11-30', stored: 'day' }],
    ['a day with its time', { number: 46356.5, shown: 'moment' }, { text: '2026-11-30 12:00', stored: 'day' }],
    ['a day in words of the standard', { xml: '<c r="ADDRESS" t="d"><v>2026-11-30T00:00:00</v></c>' }, { text: '2026-11-30', stored: 'day' }],
    ['no day where none was yet', { number: 12, shown: 'day' }, { text: '12', stored: 'number' }],
    ['yes', { xml: '<c r="ADDRESS" t="b"><v>1</v></c>' }, { text: 'true' }],
    ['the stored result of a formula', { xml: '<c r="ADDRESS"><f>SUM(1,2)</f><v>3</v></c>' }, { text: '3', stored: 'number' }],
    ['the stored text of a formula', { xml: '<c r="ADDRESS" t="str"><f>"0"&amp;".38"</f><v>0.38</v></c>' }, { text: '0.38' }],
    ['that a formula has no result', { xml: '<c r="ADDRESS"><f>SUM(1,2)</f></c>' }, { text: '', wrong: expect.stringContaining('no stored result') }],
    ['that a formula failed', { xml: '<c r="ADDRESS" t="e"><f>1/0</f><v>#DIV/0!</v></c>' }, { text: '', wrong: expect.stringContaining('error #DIV/0!') }],
    ['nothing', { xml: '<c r="ADDRESS" s="1"/>' }, undefined],
  ])('says %s', async (_, put, cell) => {
    expect(await said(put)).toEqual(cell);
  });

  it('counts its days from 1904 where the workbook does', async () => {
    expect(await said({ number: 44894, shown: 'day' }, (all) => ({ ...all, 'xl/workbook.xml': all['xl/workbook.xml']!.replace('<workbookPr/>', '<workbookPr date1904="1"/>') }))).toEqual({ text: '2026-11-30', stored: 'day' });
  });

  it('is read under whatever prefix, in the strict form, and without addresses', async () => {
    const strict = (text: string) => text.replaceAll('http://schemas.openxmlformats.org/spreadsheetml/2006/main', 'http://purl.oclc.org/ooxml/spreadsheetml/main').replaceAll('http://schemas.openxmlformats.org/officeDocument/2006/relationships', 'http://purl.oclc.org/ooxml/officeDocument/relationships');
    expect(await said(0.38, (all) => ({
      ...Object.fromEntries(Object.entries(all).map(([name, text]) => [name, strict(text)])),
      'xl/worksheets/sheet1.xml': '<x:worksheet xmlns:x="http://purl.oclc.org/ooxml/spreadsheetml/main"><x:sheetData><x:row><x:c t="inlineStr"><x:is><x:t>left</x:t></x:is></x:c></x:row><x:row><x:c><x:v>0.38</x:v></x:c></x:row></x:sheetData></x:worksheet>',
    }))).toEqual({ text: '0.38', stored: 'number' });
  });
});

describe('the rows of a workbook', () => {
  it('have the columns of the heads, wherever those begin, and their own numbers', async () => {
    const table = await read(workbookOf([[], [null, 'left', null, 'right'], [], [null, 1, null, null, 'more'], [null, null, null, 2]]));
    expect(table).toEqual({
      sheet: { name: 'Readings', others: 0 },
      lines: [
        { line: 2, cells: [{ text: 'left' }, { text: 'right' }] },
        { line: 4, cells: [{ text: '1', stored: 'number' }, { text: '' }], wrong: 'Column E has something in this row, and no head. Write its head, or empty the cell.' },
        { line: 5, cells: [{ text: '' }, { text: '2', stored: 'number' }] },
      ],
    });
  });

  it('are those of the first sheet that can be seen, and it is told how many there are beside', async () => {
    expect(await read(zipOf(partsOf({ '(Lists)': sheetOf([['b']]), 'März': sheetOf([['a']]), 'April': sheetOf([['c']]) })))).toEqual({ sheet: { name: 'März', others: 2 }, lines: [{ line: 1, cells: [{ text: 'a' }] }] });
  });

  it('may lie far away without taking room', async () => {
    const far = `<worksheet><sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="9999999"><c r="A9999999"><v>2</v></c><c r="ZZZ9999999"><v>3</v></c></row></sheetData></worksheet>`;
    const before = process.memoryUsage().heapUsed;
    expect(await read(zipOf(partsOf({ Readings: far })))).toMatchObject({ lines: [{ line: 1 }, { line: 9_999_999, cells: [{ text: '2' }], wrong: expect.stringContaining('Column ZZZ') }] });
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(50_000_000);
  });
});

describe('a file that is no workbook to read', () => {
  const DAMAGED = 'The workbook is damaged, or did not come whole. Open it in the spreadsheet, save it anew, and send that file.';
  const SAVE_AS = 'In the spreadsheet choose “Save as”, then xlsx or CSV, and send that file.';
  const good = () => workbookOf([['left'], [0.38]]);
  const changed = (part: string, change: (text: string) => string) => {
    const parts = partsOf({ Readings: sheetOf([['left'], [0.38]]) });
    return zipOf({ ...parts, [part]: change(parts[part]!) });
  };
  const SHEET = 'xl/worksheets/sheet1.xml';
  const old = Buffer.from('d0cf11e0a1b11ae1', 'hex');
  /** With another size in both places where a zip tells it. */
  const lying = async () => {
    const zip = await changed(SHEET, (text) => text + ' '.repeat(4_000_000));
    const [size, told] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32LE(partsOf({ Readings: sheetOf([['left'], [0.38]]) })[SHEET]!.length + 4_000_000);
    told.writeUInt32LE(1_000);
    for (let at = zip.indexOf(size); at !== -1; at = zip.indexOf(size, at)) told.copy(zip, at);
    return zip;
  };

  it.each<[string, () => Buffer | Promise<Buffer>, string]>([
    ['a workbook of the old kind', () => Buffer.concat([old, Buffer.alloc(600)]), `This is a workbook of the old kind (xls). ${SAVE_AS}`],
    ['one with a password', () => Buffer.concat([old, Buffer.alloc(600), Buffer.from('EncryptedPackage', 'utf16le')]), 'The workbook is locked with a password. Open it in the spreadsheet, take the password off, save it, and send that file.'],
    ['a zip of something else', () => zipOf({ 'readings.csv': 'left' }), `This is no workbook of the kind xlsx. ${SAVE_AS}`],
    ['a document of text', () => zipOf({ '_rels/.rels': '<Relationships><Relationship Id="a" Type="x/officeDocument" Target="word/document.xml"/></Relationships>', 'word/document.xml': '<document/>' }), `This is no workbook of the kind xlsx. ${SAVE_AS}`],
    ['a workbook whose sheets are pages of bits', () => zipOf({ '_rels/.rels': '<Relationships><Relationship Id="a" Type="x/officeDocument" Target="xl/workbook.bin"/></Relationships>', 'xl/workbook.bin': 'x' }), `This is no workbook of the kind xlsx. ${SAVE_AS}`],
    ['an empty zip', () => zipOf({}), `This is no workbook of the kind xlsx. ${SAVE_AS}`],
    ['the beginning of a zip', () => Buffer.from([0x50, 0x4b, 3, 4, 0, 0]), DAMAGED],
    ['one that did not come whole', async () => (await good()).subarray(0, -30), DAMAGED],
    ['one with a digit that fell over', async () => {
      const zip = await zipOf(partsOf({ Readings: sheetOf([['left'], [0.38]]) }), { compress: false });
      zip.write('7', zip.indexOf('0.38') + 2);
      return zip;
    }, DAMAGED],
    ['one with a sheet that breaks off', () => changed(SHEET, (text) => text.slice(0, -20)), DAMAGED],
    ['one without its sheet', async () => zipOf(Object.fromEntries(Object.entries(partsOf({ Readings: '' })).filter(([name]) => name !== SHEET))), DAMAGED],
    ['one whose rows go back', () => changed(SHEET, (text) => text.replaceAll('r="2"', 'r="1"').replaceAll('"A2"', '"A1"')), DAMAGED],
    ['one whose cells lie in other rows', () => changed(SHEET, (text) => text.replace('"A2"', '"A3"')), DAMAGED],
    ['one that names a text that it has not', () => changed(SHEET, (text) => text.replace('<c r="A2">', '<c r="A2" t="s">')), DAMAGED],
    ['one with a number that is none', () => changed(SHEET, (text) => text.replace('0.38', '0,38')), DAMAGED],
    ['one with words that grow', () => changed(SHEET, (text) => `<!DOCTYPE a [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;&a;">]>${text.replace('0.38', '&b;')}`), DAMAGED],
    ['one that says less than it unpacks to', lying, DAMAGED],
    ['one that unpacks to gigabytes', () => changed(SHEET, (text) => text + ' '.repeat(6_000_000)), 'The workbook is too large inside: at most 5 MB unpacked and 200 parts are read. Copy the rows alone into a new workbook, or save them as CSV, and send that file.'],
    ['one of very many parts', () => zipOf(Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`part${i}.xml`, '']))), 'The workbook is too large inside: at most 5 MB unpacked and 200 parts are read. Copy the rows alone into a new workbook, or save them as CSV, and send that file.'],
    ['one with very many heads', () => workbookOf([Array.from({ length: 101 }, (_, i) => `h${i}`)]), 'The first row has 101 heads, and at most 100 columns are read. Take out those that are not needed, and send that file.'],
    ['one that says one long text again and again', () => zipOf(partsOf({ Readings: sheetOf([['left'], ...Array.from({ length: 300 }, () => [{ xml: '<c r="ADDRESS" t="s"><v>0</v></c>' }])]) }, { texts: `<si><t>${'x'.repeat(2_000)}</t></si>` })), 'There is too much text in the sheet. Take it apart into files of at most 500 rows.'],
  ])('as %s is told what to do', async (_, content, told) => {
    expect(await words(content())).toBe(told);
  });

  it('is a good one otherwise', async () => {
    expect(await words(good())).toBe('2 rows were read');
  });
});
