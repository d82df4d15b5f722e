import { randomInt } from 'node:crypto';
import { checkCharacter } from '#libs/science/identifiers/iso7064';

/** Digits and letters without I, L, O and U: none is taken for another, and no word is spelled. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A dog's number for life, ours and on every paper: says nothing about the dog, and one wrong sign is found. */
export function newAnimalId(): string {
  for (;;) {
    const body = `CO${Array.from({ length: 8 }, () => SIGNS[randomInt(SIGNS.length)]).join('')}`;
    const check = checkCharacter(body);
    if (SIGNS.includes(check)) return body + check;
  }
}
