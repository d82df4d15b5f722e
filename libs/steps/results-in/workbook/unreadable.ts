/** A workbook as a whole that cannot be read, in words that say what to do. */
export class Unreadable extends Error {}

export const damaged = (): Unreadable => new Unreadable('The workbook is damaged, or did not come whole. Open it in the spreadsheet, save it anew, and send that file.');

export const notXlsx = (): Unreadable => new Unreadable('This is no workbook of the kind xlsx. In the spreadsheet choose “Save as”, then xlsx or CSV, and send that file.');
