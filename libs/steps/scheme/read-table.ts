import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';

const MOST_FILMS = 2_000;
const MOST_READERS = 100;

/**
 * A pasted table: a line for each film, a cell for each reader, parted by tabs or semicolons where there are any and by
 * spaces otherwise; empty lines are left out. `read` answers a number, or what is wrong with a cell.
 */
export function readTable(text: string, read: (cell: string) => number | string): number[][] {
  const wrong = (message: string) => badInput('table', message);
  const parted = /[\t;]/.test(text) ? /[\t;]/ : /\s+/;
  const lines = text.split(/\r?\n/).flatMap((line, i) => (line.trim() === '' ? [] : [{ at: i + 1, cells: line.trim().split(parted).map((cell) => cell.trim()) }]));
  const readers = lines[0]?.cells.length ?? 0;
  if (readers < 2) throw wrong(t('The first line has one cell. Give a line for each film with a column for each reader, at least two.'));
  if (lines.length < 3) throw wrong(t('Only {count} films: at least 3 are needed, and with fewer than 30 the answer is wide.', { count: lines.length }));
  if (lines.length > MOST_FILMS || readers > MOST_READERS) throw wrong(t('At most {MOSTFILMS} films and {MOSTREADERS} readers at a time.', { MOSTFILMS: MOST_FILMS, MOSTREADERS: MOST_READERS }));
  return lines.map(({ at, cells }) => {
    if (cells.length !== readers) throw wrong(t('Line {at} has {count} cells and the first has {readers}. Leave out films that not everybody read.', { at, count: cells.length, readers }));
    return cells.map((cell, column) => {
      const value = read(cell);
      if (typeof value === 'string') throw wrong(t('Line {at}, column {column}: {value}.', { at, column: column + 1, value }));
      return value;
    });
  });
}
