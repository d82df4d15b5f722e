import { ScienceError } from '../error.js';
import { normaliseScan } from './normalise-scan.js';

/** 38 bits hold the national part. */
export const LARGEST_NATIONAL_ID = 274_877_906_943n;

export interface Transponder {
  /** 15 digits; text, because leading zeros count. */
  digits: string;
  /** First three digits. */
  code: string;
  /** 1-899 a country (ISO 3166), 900-998 a maker, 999 for tests only. */
  kind: 'country' | 'maker' | 'test';
  /** Last twelve digits as a number, 1 to 274,877,906,943. */
  national: bigint;
}

/**
 * Reads an ISO 11784 number as scanned or typed. It carries no check digit: a typed number needs a second typing.
 * The kind "test" is for the caller to refuse where official numbers are asked for.
 * @throws ScienceError TRANSPONDER_SIGN, TRANSPONDER_LENGTH, TRANSPONDER_CODE, TRANSPONDER_RANGE, saying which digit and why
 */
export function parseTransponder(text: string): Transponder {
  const digits = normaliseScan(text);
  const wrong = [...digits].findIndex((sign) => !/^[0-9]$/.test(sign));
  if (wrong !== -1) {
    throw new ScienceError('TRANSPONDER_SIGN', `Digit ${wrong + 1} is "${[...digits][wrong]}". A transponder number has only the digits 0 to 9.`);
  }
  if (digits.length !== 15) {
    const off = digits.length - 15;
    const why = off < 0 ? `${-off} missing` : `${off} too many, from digit 16 on`;
    throw new ScienceError('TRANSPONDER_LENGTH', `A transponder number has 15 digits; this has ${digits.length} (${why}). Scan again. Older kinds with other lengths are recorded as "older kind".`);
  }
  const code = digits.slice(0, 3);
  const national = BigInt(digits.slice(3));
  if (code === '000') throw new ScienceError('TRANSPONDER_CODE', 'Digits 1 to 3 are 000, which is neither a country nor a maker. Scan again.');
  if (national === 0n) throw new ScienceError('TRANSPONDER_RANGE', 'Digits 4 to 15 are all 0, so this names no animal. Scan again.');
  if (national > LARGEST_NATIONAL_ID) {
    throw new ScienceError('TRANSPONDER_RANGE', `Digits 4 to 15 are ${digits.slice(3)}; the largest that a transponder can hold is ${LARGEST_NATIONAL_ID}. ${whereTooLarge(digits)}`);
  }
  return { digits, code, kind: kindOf(Number(code)), national };
}

function kindOf(code: number): Transponder['kind'] {
  if (code === 999) return 'test';
  return code >= 900 ? 'maker' : 'country';
}

function whereTooLarge(digits: string): string {
  const largest = LARGEST_NATIONAL_ID.toString();
  const place = [...largest].findIndex((digit, i) => digits[i + 3]! > digit);
  return `Digit ${place + 4} is too large. Scan again.`;
}

/** "276 098 102 345 678": in groups of three, as on paper, for reading aloud. */
export function formatTransponder({ digits }: Transponder): string {
  return digits.match(/\d{3}/g)!.join(' ');
}

/** The 64-bit word of ISO 11784: animal flag set, reserved bits and data-block flag 0, 10 bits of code, 38 bits of national id. */
export function transponderWord({ code, national }: Transponder): bigint {
  return (1n << 63n) | (BigInt(code) << 38n) | national;
}

/**
 * Reads a 64-bit word as a reader sends it; retagging count and reserved bits are left aside.
 * @throws ScienceError TRANSPONDER_WORD when it is no 64-bit word or not an animal's, and those of parseTransponder
 */
export function transponderFromWord(word: bigint): Transponder {
  if (word < 0n || word >= 1n << 64n) throw new ScienceError('TRANSPONDER_WORD', 'A transponder sends 64 bits; this is no 64-bit number.');
  if (word >> 63n === 0n) throw new ScienceError('TRANSPONDER_WORD', 'Bit 1 is 0: this transponder is not marked as an animal’s.');
  const code = (word >> 38n) & 0x3ffn;
  const national = word & LARGEST_NATIONAL_ID;
  if (code > 999n) throw new ScienceError('TRANSPONDER_WORD', `Bits 17 to 26 give ${code}; a country or maker has at most 999.`);
  return parseTransponder(code.toString().padStart(3, '0') + national.toString().padStart(12, '0'));
}
