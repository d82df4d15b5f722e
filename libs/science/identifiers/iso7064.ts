import { ScienceError } from '../error.js';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';

function valueOf(sign: string, place: number, size: number): number {
  const value = SIGNS.slice(0, size).indexOf(sign);
  if (value === -1) throw new ScienceError('BAD_SIGN', `Sign ${place + 1}, "${sign}", is neither a digit${size > 10 ? ` nor a letter A to ${SIGNS[size - 1]}` : ''}.`);
  return value;
}

/**
 * Check character of an ISO 7064 hybrid system MOD size+1,size over the first `size` signs of 0-9, A-Z.
 * @param size 10 (digits) to 36 (digits and letters)
 * @throws ScienceError BAD_SIGN names the sign and its place; EMPTY
 */
export function hybridCheck(text: string, size: number): string {
  if (text === '') throw new ScienceError('EMPTY', 'There is nothing to make a check character of.');
  let carry = size;
  for (const [place, sign] of [...text].entries()) {
    const sum = (carry + valueOf(sign, place, size)) % size || size;
    carry = (sum * 2) % (size + 1);
  }
  return SIGNS[(size + 1 - carry) % size]!;
}

/**
 * Check character of ISO 7064 MOD 37,36 over digits and capital letters.
 * Finds every single wrong sign and almost every exchange of two neighbours.
 * @throws ScienceError BAD_SIGN names the sign and its place; EMPTY
 */
export function checkCharacter(text: string): string {
  return hybridCheck(text, SIGNS.length);
}

/** Whether the last sign is the check character of those before it. */
export function hasValidCheck(text: string): boolean {
  return text.length > 1 && checkCharacter(text.slice(0, -1)) === text.at(-1);
}
