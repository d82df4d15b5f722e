import type { Tellable } from '#libs/words/said-error';

/** A cell in the words of whoever wrote it, as far as its file still has them. */
export interface Cell {
  text: string;
  /** A workbook has it as something else than text, and may have lost what was written. */
  stored?: 'number' | 'day';
  /** Why it says nothing. */
  wrong?: Tellable;
}

export interface Line {
  /** Its row in the file, from 1. */
  line: number;
  /** One for each head. */
  cells: Cell[];
  /** What is wrong with the row before anybody reads it. */
  wrong?: Tellable;
}

/** The sheet of a workbook that was read, and how many it has beside. */
export interface SheetRead { name: string; others: number }

/** Rows of a file, the heads first; or why there are none. */
export type Table = { lines: Line[]; sheet?: SheetRead } | { line: number; told: Tellable };
