/**
 * What a scanner that types like a keyboard, or a person copying from paper, meant:
 * full-width signs become plain ones, letters capital, and spaces, dashes, dots, control and
 * invisible signs (a scanner's Enter or Tab, a byte order mark) go.
 */
export function normaliseScan(text: string): string {
  return text.normalize('NFKC').toUpperCase().replace(/[\s\p{C}\p{Pd}\u2212.]/gu, '');
}
