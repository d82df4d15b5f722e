import type { StatedReading } from '#libs/contracts/results-in';
import type { Cell } from './table.js';

const AS_TEXT = 'Format the column as text, then write it again.';
/** A spreadsheet keeps no more digits of a number. */
const MOST_DIGITS = 15;

/** Why a cell does not say what was written in it, in words for its row; undefined where it does. */
export function notAsWritten(head: string, field: keyof StatedReading | undefined, { text, stored, wrong }: Cell): string | undefined {
  if (wrong) return `“${head}”: ${wrong}`;
  if (stored === 'day' && field !== 'readOn') return `“${head}” holds the day ${text}; a spreadsheet makes one of much that is typed. ${AS_TEXT}`;
  if (stored !== 'number' || !field) return undefined;
  const digits = text.replaceAll(/\D/g, '');
  if (digits.length > MOST_DIGITS || text.includes('e')) return `“${head}” is stored as a number, of which a spreadsheet keeps only the first ${MOST_DIGITS} digits. ${AS_TEXT}`;
  if (field === 'dogNumber' && digits.length < MOST_DIGITS) return `“${head}” is stored as a number of ${digits.length} digits, and a spreadsheet drops the zeros before a number; a transponder has 15. ${AS_TEXT}`;
  return undefined;
}
