/** A cell that a spreadsheet would run as a formula is written as text; numbers are left alone. */
function cell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** RFC 4180 with a mark in front that tells spreadsheets the text is UTF-8. */
export function csv(head: string[], rows: (string | number | null)[][]): string {
  return `\uFEFF${[head, ...rows].map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
