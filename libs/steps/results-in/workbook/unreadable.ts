import { said } from '#libs/words/said';
import { SaidError, type Tellable } from '#libs/words/said-error';

/** A workbook as a whole that cannot be read, in words that say what to do. */
export class Unreadable extends SaidError {
  constructor(sentence: Tellable) {
    super(sentence);
  }
}

export const damaged = (): Unreadable => new Unreadable(said('The workbook is damaged, or did not come whole. Open it in the spreadsheet, save it anew, and send that file.'));

export const notXlsx = (): Unreadable => new Unreadable(said('This is no workbook of the kind xlsx. In the spreadsheet choose “Save as”, then xlsx or CSV, and send that file.'));
