/** The most rows that a file holds; a longer list is said to be longer. */
export const MOST_ROWS = 50_000;

/** A cell that a spreadsheet would run as a formula is written as text; numbers are left alone. */
function cell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** RFC 4180; heads are the same in every language, so that what is built upon a file goes on working. With a mark in front that tells spreadsheets the text is UTF-8. */
export function csv(head: string[], rows: (string | number | null)[][], more = false): string {
  const last = more ? [[`The list is longer: this file ends after ${rows.length} rows. Search for fewer, and fetch it again.`]] : [];
  return `\uFEFF${[head, ...rows, ...last].map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
