import { readCsv } from './read-csv.js';

const line = { reference: 'WS26-00001-A', study: 'Elbows', amountMinor: 5800 };

describe('lines of a bill from a file', () => {
  it.each([
    ['commas', 'reference,study,amount\nWS26-00001-A,Elbows,58.00\n'],
    ['semicolons and decimal commas', 'Reference;Study;Amount\r\nWS26-00001-A;Elbows;58,00\r\n'],
    ['tabs, other heads and another order', 'amount\tnumber\texamination\n58\tWS26-00001-A\tElbows'],
    ['a mark in front and quotation marks', '\uFEFF"reference","study","amount"\n"WS26-00001-A","Elbows","58.00"'],
    ['more columns and empty rows', '\n\nreference,dog,study,amount\n\nWS26-00001-A,Gale,Elbows,58.00\n,,,\n'.replace(',,,\n', '')],
  ])('are read with %s', (_, text) => {
    const { rows, errors } = readCsv(text);
    expect(errors).toEqual([]);
    expect(rows.map(({ row: _row, ...rest }) => rest)).toEqual([line]);
  });

  it('keep a comma inside quotation marks', () => {
    expect(readCsv('reference,study,amount\nP-1,"Hips, laxity",58.00').rows).toEqual([{ row: 2, reference: 'P-1', study: 'Hips, laxity', amountMinor: 5800 }]);
  });

  it('that are wrong are told by the row of the file, and the others are read', () => {
    const { rows, errors } = readCsv('reference,study,amount\nP-1,Elbows,58.00\n\nP-2,Elbows,fifty\n,Elbows,58.00\nP-4,,58.00\nP-5,Elbows,0\nP-6,Elbows,-58.00\nP-7,Elbows,"1,000.00"\nP-8,Elbows,99999999999\nP-9,Elbows,5.805\nP-10,Elbows');
    expect(rows).toEqual([{ row: 2, reference: 'P-1', study: 'Elbows', amountMinor: 5800 }]);
    expect(errors.map((e) => e.row)).toEqual([4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(errors[0]!.words).toContain('“fifty” is no amount. Write it like 58.00');
    expect(errors.map((e) => e.words)).toEqual(expect.arrayContaining(['Write the order or package number, as the bill has it.', 'Write the study, as the bill has it.', 'An amount is more than nothing.', 'At most 1,000,000.00. Look at the decimal sign.']));
  });

  it.each([['', 1], ['a,b\n1,2', 1], ['reference,study,amount\n', 2], ['reference,study,amount\n"P-1,Elbows,58.00', 2]])('%j is refused with its row', (text, row) => {
    expect(readCsv(text)).toEqual({ rows: [], errors: [{ row, words: expect.stringMatching(/\.$/) as string }] });
  });
});
