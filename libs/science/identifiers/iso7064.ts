import { ScienceError } from '../error.js';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';

function valueOf(sign: string, place: number): number {
  const value = SIGNS.indexOf(sign);
  if (value === -1) throw new ScienceError('BAD_SIGN', `Sign ${place + 1}, "${sign}", is neither a digit nor a letter A to Z.`);
  return value;
}

/**
 * Check character of ISO 7064 MOD 37,36 over digits and capital letters.
 * Finds every single wrong sign and almost every exchange of two neighbours.
 * @throws ScienceError BAD_SIGN names the sign and its place
 */
export function checkCharacter(text: string): string {
  if (text === '') throw new ScienceError('EMPTY', 'There is nothing to make a check character of.');
  let carry = 36;
  for (const [place, sign] of [...text].entries()) {
    const sum = (carry + valueOf(sign, place)) % 36 || 36;
    carry = (sum * 2) % 37;
  }
  return SIGNS[(37 - carry) % 36]!;
}

/** Whether the last sign is the check character of those before it. */
export function hasValidCheck(text: string): boolean {
  return text.length > 1 && checkCharacter(text.slice(0, -1)) === text.at(-1);
}
