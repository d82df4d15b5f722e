import { csv } from './csv.js';

describe('a CSV file on its way out', () => {
  it.each(['=1+1', '+49', '-2', '@home', '\tx', ' =1+1', '＝1+1', '\n=1'])('turns the cell %j into text, so that no spreadsheet runs it', (value) => {
    expect(csv(['a'], [[value]]).split('\r\n')[1]).toMatch(new RegExp(`^"?'`));
  });

  it('says at its end that the list is longer than the file', () => {
    expect(csv(['a'], [['b']], true)).toMatch(/b\r\n"?The list is longer: this file ends after 1 rows\./);
    expect(csv(['a'], [['b']])).not.toContain('longer');
  });

  it('leaves numbers alone, quotes what needs it and ends every line', () => {
    expect(csv(['name', 'value'], [['Long, "Reach"', -2], [null, 3.5]])).toBe('\uFEFFname,value\r\n"Long, ""Reach""",-2\r\n,3.5\r\n');
  });
});
