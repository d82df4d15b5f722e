import { said } from '#libs/words/said';
import type { Tellable } from '#libs/words/said-error';
import type { StatedReading } from '#libs/contracts/results-in';
import type { Cell } from './table.js';

const AS_TEXT: Tellable = said('Format the column as text, then write it again.');
/** A spreadsheet keeps no more digits of a number. */
const MOST_DIGITS = 15;

/** Why a cell does not say what was written in it, for its row; nothing where it does. */
export function notAsWritten(head: string, field: keyof StatedReading | undefined, { text, stored, wrong }: Cell): Tellable[] {
  if (wrong) return [said('“{head}”: {why}', { head, why: wrong })];
  if (stored === 'day' && field !== 'readOn') return [said('“{head}” holds the day {day}; a spreadsheet makes one of much that is typed.', { head, day: text }), AS_TEXT];
  if (stored !== 'number' || !field) return [];
  const digits = text.replaceAll(/\D/g, '');
  if (digits.length > MOST_DIGITS || text.includes('e')) return [said('“{head}” is stored as a number, of which a spreadsheet keeps only the first {most} digits.', { head, most: MOST_DIGITS }), AS_TEXT];
  if (field === 'dogNumber' && digits.length < MOST_DIGITS) return [said('“{head}” is stored as a number of {digits} digits, and a spreadsheet drops the zeros before a number; a transponder has 15.', { head, digits: digits.length }), AS_TEXT];
  return [];
}
