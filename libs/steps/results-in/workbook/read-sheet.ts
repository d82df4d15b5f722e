import { said } from '#libs/words/said';
import type { Cell, Line } from '../table.js';
import { cellOf, type Book, type Stored } from './cell-of.js';
import { readXml } from './read-xml.js';
import { TextRuns } from './text-runs.js';
import { damaged, Unreadable } from './unreadable.js';

const MOST_COLUMNS = 100;
/** As much as a file of text may have; a workbook writes a text once and names it often. */
const MOST_SIGNS = 500_000;
const EMPTY: Cell = { text: '' };

interface Row { line: number; cells: Map<number, Cell> }

/** Rows that hold something, each with the columns of the first of them. A row or cell far away takes no more room than one that is near. */
export function readSheet(xml: string, book: Book): Line[] {
  const [head, ...rows] = rowsIn(xml, book);
  if (!head) return [];
  const columns = [...head.cells.keys()];
  if (columns.length > MOST_COLUMNS) throw new Unreadable(said('The first row has {heads} heads, and at most {most} columns are read. Take out those that are not needed, and send that file.', { heads: columns.length, most: MOST_COLUMNS }));
  return [head, ...rows].map(({ line, cells }) => {
    const headless = [...cells.keys()].find((column) => !head.cells.has(column));
    return { line, cells: columns.map((column) => cells.get(column) ?? EMPTY), ...(headless && { wrong: said('Column {column} has something in this row, and no head. Write its head, or empty the cell.', { column: letters(headless) }) }) };
  });
}

function rowsIn(xml: string, book: Book): Row[] {
  const rows: Row[] = [];
  const runs = new TextRuns('v', 't');
  let [inside, line, column, signs] = [false, 0, 0, 0];
  let cells = new Map<number, Cell>();
  let stored: Stored | undefined;
  readXml(xml, {
    open: (name, attributes) => {
      if (name === 'sheetData') inside = true;
      if (!inside) return;
      if (name === 'row') [line, column, cells] = [next(line, attributes.get('r') ?? String(line + 1)), 0, new Map()];
      if (name === 'c') {
        column = next(column, columnOf(attributes.get('r'), line) ?? String(column + 1));
        stored = { type: attributes.get('t') ?? 'n', format: book.formats[Number(attributes.get('s') ?? 0)], formula: false, hasValue: false };
        runs.begin();
      }
      if (name === 'f' && stored) stored.formula = true;
      if ((name === 'v' || name === 't') && stored) stored.hasValue = true;
      runs.open(name);
    },
    text: (text) => runs.add(text),
    close: (name) => {
      runs.close(name);
      if (name === 'sheetData') inside = false;
      if (name === 'c' && stored) {
        const cell = cellOf(stored, runs.text, book);
        if (cell.text !== '' || cell.wrong) cells.set(column, cell);
        signs += cell.text.length;
        if (signs > MOST_SIGNS) throw new Unreadable(said('There is too much text in the sheet. Take it apart into files of at most 500 rows.'));
        stored = undefined;
      }
      if (name === 'row' && inside && cells.size > 0) rows.push({ line, cells });
    },
  });
  return rows;
}

/** Rows and columns only go on; what goes back would be read twice. */
function next(before: number, told: string): number {
  const now = /^\d{1,7}$/.test(told) ? Number(told) : 0;
  if (now <= before) throw damaged();
  return now;
}

function columnOf(address: string | undefined, line: number): string | undefined {
  if (address === undefined) return undefined;
  const [, name, row] = /^([A-Z]{1,3})(\d+)$/.exec(address) ?? [];
  if (!name || Number(row) !== line) throw damaged();
  return String([...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0));
}

const letters = (column: number): string => (column > 26 ? letters(Math.floor((column - 1) / 26)) : '') + String.fromCharCode(65 + ((column - 1) % 26));
