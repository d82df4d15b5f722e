import { ScienceError } from '../error.js';
import { checkCharacter } from './iso7064.js';
import { normaliseScan } from './normalise-scan.js';

/** 32 signs, five bits each; I, L, O and U are left out because they are misread. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LENGTH = 16;

/** How many random bytes `certificateSerial` takes. */
export const SERIAL_BYTES = 10;

/**
 * A serial that says nothing about the dog and cannot be guessed: 14 random signs (70 bits), one sign that
 * keeps the check character inside the alphabet, and the check character (ISO 7064 MOD 37,36).
 * @param bytes ten bytes from a cryptographic source
 * @returns four groups of four: "7QK2-M9XD-VT4F-3HJK"
 * @throws ScienceError SERIAL_BYTES
 */
export function certificateSerial(bytes: Uint8Array): string {
  if (bytes.length !== SERIAL_BYTES) throw new ScienceError('SERIAL_BYTES', `A serial is made of ${SERIAL_BYTES} random bytes, not ${bytes.length}.`);
  let bits = bytes.reduce((sum, byte) => (sum << 8n) | BigInt(byte), 0n);
  const take = () => {
    const value = Number(bits & 31n);
    bits >>= 5n;
    return value;
  };
  const random = Array.from({ length: LENGTH - 2 }, () => SIGNS[take()]!).join('');
  const start = take();
  for (let step = 0; step < SIGNS.length; step++) {
    const body = random + SIGNS[(start + step) % SIGNS.length]!;
    const check = checkCharacter(body);
    if (SIGNS.includes(check)) return group(body + check);
  }
  throw new ScienceError('SERIAL_BYTES', 'No serial can be made of these bytes. Take new ones.');
}

/**
 * Reads a serial as typed: groups, case and spaces do not matter; O is taken for 0, I and L for 1.
 * @returns the serial as printed
 * @throws ScienceError SERIAL_FORM, SERIAL_CHECK
 */
export function parseCertificateSerial(typed: string): string {
  const plain = normaliseScan(typed).replace(/O/g, '0').replace(/[IL]/g, '1');
  const wrong = [...plain].findIndex((sign) => !SIGNS.includes(sign));
  if (wrong !== -1) throw new ScienceError('SERIAL_FORM', `Sign ${wrong + 1}, "${[...plain][wrong]}", does not occur in serials. Look at the paper again.`);
  if (plain.length !== LENGTH) throw new ScienceError('SERIAL_FORM', `A serial has ${LENGTH} signs in four groups; this has ${plain.length}.`);
  if (checkCharacter(plain.slice(0, -1)) !== plain.at(-1)) {
    throw new ScienceError('SERIAL_CHECK', 'The last sign does not fit the others, so at least one sign is wrong. Type it again from the paper.');
  }
  return group(plain);
}

const group = (plain: string) => plain.match(/.{4}/g)!.join('-');
