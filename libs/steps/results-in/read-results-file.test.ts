import { readFileSync } from 'node:fs';
import path from 'node:path';
import { workbookOf, type Put } from '#test/support/workbook';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { checkReading } from '#libs/science/protocols/check-reading';
import type { JointReading } from '#libs/science/protocols/types';
import { inPlainEnglish, type Tellable } from '#libs/words/said-error';
import { readResultsFile } from './read-results-file.js';
import { isStated, type Read } from './stated.js';

const study = (code: string) => currentProtocols().find((p) => p.code === code)!;
const read = async (text: string | Buffer): Promise<Read[]> => (await readResultsFile(Buffer.from(text as string))).rows;
const inEnglish = (told: Tellable[]) => told.map(inPlainEnglish).join(' ');
const words = async (text: string | Buffer): Promise<[number, string][]> => (await read(text)).map((r) => [r.place, isStated(r) ? 'can be read' : inEnglish(r.told)]);
const jointsOf = async (text: string | Buffer, code: string) => {
  const [first] = await read(text);
  if (!first || !isStated(first)) throw new Error(first ? inEnglish(first.told) : 'There is no row.');
  const { joints, problems } = first.joints(study(code));
  return { joints, problems: problems.map(inPlainEnglish) };
};
const lax = { joints: [{ joint: 'left', value: 0.38 }, { joint: 'right', value: 0.44 }], problems: [] };

describe('readings in a file', () => {
  it.each([
    ['commas', 'package,number,read by,left,right\nP-1,R-1,Noemi Haskel,0.38,0.44\n'],
    ['semicolons and decimal commas', 'Package;Number;Read by;Left;Right\r\nP-1;R-1;Noemi Haskel;0,38;0,44\r\n'],
    ['tabs and another order', 'left\tright\tnumber\tread by\tpackage\n0.38\t0,44\tR-1\tNoemi Haskel\tP-1'],
    ['commas, and decimal commas in quotation marks', '\uFEFFpackage,number,read by,left,right\nP-1,R-1,Noemi Haskel,"0,38","0,44"'],
    ['UTF-16, as some spreadsheets write it', Buffer.from('\uFEFFpackage\tnumber\tread by\tleft\tright\nP-1\tR-1\tNoemi Haskel\t0,38\t0,44', 'utf16le')],
  ])('are read with %s', async (_, text) => {
    expect(await jointsOf(text, 'hipLaxity')).toEqual(lax);
  });

  it.each([['UTF-8', 'utf8'], ['Latin-1', 'latin1']] as const)('keep the names of people in %s', async (_, encoding) => {
    const [row] = await read(Buffer.from('package;number;read by;left;right\nP-1;R-1;Jörg Weiß;0,38;0,44', encoding));
    expect(row).toMatchObject({ reading: { readBy: 'Jörg Weiß' } });
  });

  it.each(['readings.csv', 'readings.xlsx'])('of the documentation are read for each study, with the day as German spreadsheets write it: %s', async (name) => {
    const { rows } = await readResultsFile(readFileSync(path.resolve(import.meta.dirname, '../../../docs/results-in', name)));
    const all = rows.map((row) => (isStated(row) ? { ...row.reading, ...row.joints(study(row.reading.study!)) } : row));
    expect(all).toEqual([
      { package: 'P-1A2B3C4D', study: 'hipLaxity', number: 'R-2031', readBy: 'Noemi Haskel', readOn: '2026-11-30', ...lax },
      {
        package: 'P-2B3C4D5E', study: 'hipExtended', number: 'R-2032', readBy: 'Noemi Haskel', readOn: '2026-11-30', comment: 'The right hip lay turned.', problems: [],
        joints: [{ joint: 'left', value: 'B1', findings: { criteria: '2022', norbergAngle: 105.5 } }, { joint: 'right', reason: 'position' }],
      },
      {
        package: 'P-3C4D5E6F', study: 'elbow', number: 'R-2033', readBy: 'Noemi Haskel', readOn: '2026-11-30', problems: [],
        joints: [{ joint: 'left', value: '0', findings: { osteophytes: 'none', primaryLesion: 'absent' } }, { joint: 'right', value: '1', findings: { osteophytes: 'under2', primaryLesion: 'absent' } }],
      },
    ]);
    for (const { study: code, joints } of all as { study: string; joints: JointReading[] }[]) expect(checkReading(study(code), joints)).toEqual([]);
  });

  it('never let a decimal comma slide into the next column', async () => {
    expect(await words('package,number,read by,left,right\nP-1,R-1,N,0,38,0,44')).toEqual([[2, expect.stringContaining('This row has 7 cells and the heads have 5.')]]);
    expect(await words('package,number,read by,left,right,comment\nP-1,R-1,N,0,38')).toEqual([[2, expect.stringContaining('5 cells')]]);
  });

  it('that are wrong are told by the line of the file, and the others are read', async () => {
    const file = 'package,order,number,read by,read on,left,right\nP-1,,R-1,N,,0.38,0.44\n\n,,R-2,N,,0.38,0.44\nP-3,,,N,,0.38,0.44\nP-4,,R-4,,,0.38,0.44\nP-5,,R-5,N,31.02.2026,0.38,0.44\n';
    expect(await words(file)).toEqual([[2, 'can be read'], [4, expect.stringContaining('Name the package')], [5, 'Number: it is missing.'], [6, 'Read by: Say who read the films.'], [7, expect.stringContaining('Read on:')]]);
  });

  it.each([
    ['0.38 mm', 'is no number'], ['1,000.5', 'is no number'], ['gasInJoint', 'is a reason. Write it in the column of the reasons'], ['<0.3', 'is no number'], ['0.3.1', 'is no number'], ['--', 'is no number'],
  ])('with “%s” as a value are told what to write', async (text, says) => {
    expect((await jointsOf(`package\tnumber\tread by\tleft\tright\nP-1\tR-1\tN\t${text}\t0.44`, 'hipLaxity')).problems).toEqual([expect.stringContaining(says)]);
  });

  it('with a finding or a reason that the study does not have are told which it has', async () => {
    const { problems } = await jointsOf('package;number;read by;left;left reason;left osteophytes;left arthrosis;right\nP-1;R-1;N;;tired;2;maybe;0,44', 'hipLaxity');
    expect(problems).toEqual([expect.stringContaining('“osteophytes” is not recorded in this study'), expect.stringContaining('write yes or no, not “maybe”'), expect.stringContaining('“tired” is no reason of this protocol. Use one of gasInJoint')]);
  });

  it.each([
    ['', 1, 'The first row names the columns'], ['a,b\n1,2', 1, 'No column is called “a”, “b”'], ['package,number,read by\nP,R,N', 1, 'The first row names the columns'], ['package,number,read by,left,right\n', 1, 'no row below the heads'],
    ['package,number,read by,left,Left,right\nP,R,N,1,2,3', 1, 'Two columns are called'], ['package,number,read by,left,right\n"P,R,N,0.1,0.2', 2, 'quotation mark'], ['PK\u0003\u0004 a workbook', 1, 'The workbook is damaged'], ['PK;number', 1, 'No column is called “PK”'],
    [`package,number,read by,left,right\n${'P,R,N,0.1,0.2\n'.repeat(501)}`, 1, 'There are 501 rows.'],
  ])('%j is refused with its line', async (text, line, says) => {
    expect(await words(text)).toEqual([[line, expect.stringContaining(says)]]);
  });
});

describe('readings in a workbook', () => {
  const HEADS = ['package', 'number', 'read by', 'read on', 'dog number', 'left', 'right'];
  const row = (more: Record<string, Put>): Put[] => HEADS.map((head) => more[head] ?? ({ package: 'P-1', number: 'R-1', 'read by': 'N', left: 0.38, right: 0.44 } as Record<string, Put>)[head] ?? null);

  it('say what the file says, stored as text or not', async () => {
    const [first, second] = await read(await workbookOf([HEADS, row({ number: 2031, 'read on': { number: 46356, shown: 'day' }, 'dog number': 900000000000001 }), row({ left: '0,38', right: '0.44', 'read on': '30.11.2026', 'dog number': '040981000000001' })]));
    expect(first).toMatchObject({ place: 2, reading: { number: '2031', readOn: '2026-11-30', dogNumber: '900000000000001' }, said: expect.arrayContaining([{ what: 'left', words: '0.38' }]) });
    expect(second).toMatchObject({ place: 3, reading: { readOn: '2026-11-30', dogNumber: '040981000000001' } });
    for (const one of [first!, second!]) expect(isStated(one) && one.joints(study('hipLaxity'))).toEqual(lax);
  });

  it('are told by their row what a spreadsheet has changed, and the others are read', async () => {
    const lost = 'Format the column as text, then write it again.';
    expect(await words(await workbookOf([
      HEADS, row({}), row({ 'dog number': 40981000000001 }), row({ 'dog number': { number: '9000000000000012', shown: 'general' } }), row({ 'dog number': { number: 40981000000001, shown: 'fifteen' } }), row({ left: { number: 46026, shown: 'day' } }),
      row({ number: { number: 46026, shown: 'day' } }), row({ number: { number: '1.2345678901234567E+20', shown: 'general' } }), row({ right: { xml: '<c r="ADDRESS" t="e"><f>1/0</f><v>#DIV/0!</v></c>' } }), row({ 'read on': 46356 }), [...row({}), 'beside'],
    ]))).toEqual([
      [2, 'can be read'],
      [3, `“dog number” is stored as a number of 14 digits, and a spreadsheet drops the zeros before a number; a transponder has 15. ${lost}`],
      [4, `“dog number” is stored as a number, of which a spreadsheet keeps only the first 15 digits. ${lost}`],
      [5, 'can be read'],
      [6, `“left” holds the day 2026-01-04; a spreadsheet makes one of much that is typed. ${lost}`],
      [7, `“number” holds the day 2026-01-04; a spreadsheet makes one of much that is typed. ${lost}`],
      [8, `“number” is stored as a number, of which a spreadsheet keeps only the first 15 digits. ${lost}`],
      [9, '“right”: it holds the spreadsheet’s error #DIV/0!. Correct it in the spreadsheet.'],
      [10, expect.stringContaining('Read on:')],
      [11, 'Column H has something in this row, and no head. Write its head, or empty the cell.'],
    ]);
  });
});
