import { sign, verify } from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { DICTIONARY_1 } from './check-code-dictionary.js';

/** Every fact printed on a certificate, label and value as they stand on the paper, in its order. */
export type PrintedFacts = readonly (readonly [label: string, value: string])[];

export interface SignedFacts {
  /** The facts, packed so that a code can carry them: base64url of canonical JSON, raw deflate with DICTIONARY_1. */
  payload: string;
  /** Ed25519 over the canonical JSON, base64url. */
  signature: string;
}

const LARGEST_FACTS = 16_384;

/** Facts are pairs in printed order, so plain JSON of them has one form only; the name keeps a signature to its use. */
export function canonicalFacts(facts: PrintedFacts): string {
  return JSON.stringify(['cotyla certificate 1', ...facts.map(([label, value]) => [label, value])]).normalize('NFC');
}

export function signFacts(facts: PrintedFacts, privateKeyPem: string): SignedFacts {
  const bytes = Buffer.from(canonicalFacts(facts));
  if (bytes.length > LARGEST_FACTS) throw new RangeError('Too many facts for one code. Shorten the remarks on the certificate.');
  return {
    payload: deflateRawSync(bytes, { level: 9, dictionary: DICTIONARY_1 }).toString('base64url'),
    signature: sign(null, bytes, privateKeyPem).toString('base64url'),
  };
}

/** The facts that were signed, or null where payload and signature do not belong together under this key. */
export function verifyFacts(signed: SignedFacts, publicKeyPem: string): PrintedFacts | null {
  const bytes = unpack(signed.payload);
  if (!bytes || !verify(null, bytes, publicKeyPem, Buffer.from(signed.signature, 'base64url'))) return null;
  const [name, ...facts] = JSON.parse(bytes.toString('utf8')) as [string, ...[string, string][]];
  return name === 'cotyla certificate 1' ? facts : null;
}

function unpack(payload: string): Buffer | null {
  try {
    return inflateRawSync(Buffer.from(payload, 'base64url'), { maxOutputLength: LARGEST_FACTS, dictionary: DICTIONARY_1 });
  } catch {
    // A damaged or forged code is an answer, not a fault: it does not verify.
    return null;
  }
}

/**
 * What the QR code holds: the check page, with facts and signature behind the #, which a browser keeps to itself,
 * so that the paper can be checked with the server away and the server's log learns nothing from it.
 */
export function codeText(checkUrl: string, serial: string, signed: SignedFacts): string {
  return `${checkUrl.replace(/\/$/, '')}/${serial}#${signed.payload}.${signed.signature}`;
}

export function readCode(text: string): SignedFacts | null {
  const match = /#([A-Za-z0-9_-]+)\.([A-Za-z0-9_-]+)$/.exec(text);
  return match?.[1] && match[2] ? { payload: match[1], signature: match[2] } : null;
}
