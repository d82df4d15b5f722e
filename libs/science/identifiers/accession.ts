import { said } from '#libs/words/said';
import { ScienceError } from '../error.js';
import { checkCharacter } from './iso7064.js';
import { normaliseScan } from './normalise-scan.js';

export interface Accession {
  /** As printed, at most 15 signs: "AR26-00417-9". */
  text: string;
  /** Two to four letters of the practice, never I or O. */
  practice: string;
  /** Four digits. */
  year: number;
  /** Running number within practice and year, 1 to 999999. */
  number: number;
}

/**
 * The first usable accession number after `last`. Numbers whose check character would be O or I are left
 * out, so that a printed number never holds a sign that can be taken for 0 or 1.
 * @param last highest number used by this practice in this year, 0 for none
 * @throws ScienceError ACCESSION_PRACTICE, ACCESSION_YEAR, ACCESSION_FULL
 */
export function nextAccession(practice: string, year: number, last: number): Accession {
  if (!/^[A-HJ-NP-Z]{2,4}$/.test(practice)) {
    throw new ScienceError('ACCESSION_PRACTICE', `"${practice}" cannot stand in order numbers. Give the practice 2 to 4 capital letters other than I and O.`);
  }
  if (!Number.isInteger(year) || year < 2000 || year > 2099) throw new ScienceError('ACCESSION_YEAR', `Order numbers are made for the years 2000 to 2099, not ${year}.`);
  if (!Number.isInteger(last) || last < 0) throw new ScienceError('ACCESSION_LAST', `The last number used must be 0 or a whole number above it, not ${last}.`);
  for (let number = last + 1; number <= 999_999; number++) {
    const body = `${practice}${String(year).slice(2)}`;
    const running = String(number).padStart(5, '0');
    const check = checkCharacter(body + running);
    if (check !== 'O' && check !== 'I') return { text: `${body}-${running}-${check}`, practice, year, number };
  }
  throw new ScienceError('ACCESSION_FULL', `Practice ${practice} has used all order numbers of ${year}. Give it a second set of letters.`);
}

/**
 * Reads an order number as scanned or typed: dashes and spaces do not matter, O and I are taken for 0 and 1.
 * @throws ScienceError ACCESSION_FORM, ACCESSION_CHECK
 */
export function parseAccession(typed: string): Accession {
  const plain = normaliseScan(typed);
  const letters = /^[A-Z]*/.exec(plain.slice(0, 4))![0].replace(/[OI]+$/, '');
  const rest = plain.slice(letters.length).replace(/O/g, '0').replace(/I/g, '1');
  const [, yy, running, check] = /^(\d\d)(\d{5}|[1-9]\d{5})([0-9A-Z])$/.exec(rest) ?? [];
  if (!/^[A-HJ-NP-Z]{2,4}$/.test(letters) || !yy || !running || !check) {
    throw new ScienceError('ACCESSION_FORM', said('“{typed}” is not an order number. It has 2 to 4 letters, the year, a running number and a check sign, like AR26-00417-9.', { typed }));
  }
  const expected = checkCharacter(letters + yy + running);
  if (check !== expected) {
    throw new ScienceError('ACCESSION_CHECK', said('The last sign of “{typed}” does not fit the others, so at least one sign is wrong. Scan it or type it again.', { typed }));
  }
  return { text: `${letters}${yy}-${running}-${check}`, practice: letters, year: 2000 + Number(yy), number: Number(running) };
}
