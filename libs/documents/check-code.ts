import { sign, verify } from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Language } from '#libs/words/languages';
import { DICTIONARIES } from './check-code-dictionary.js';

/** Every fact printed on a certificate, label and value as they stand on the paper, in its order. */
export type PrintedFacts = readonly (readonly [label: string, value: string])[];

export interface SignedFacts {
  /** The language of the paper: which name is signed with the facts, and which dictionary they are packed with. */
  language: Language;
  /** The facts, packed so that a code can carry them: base64url of canonical JSON, raw deflate with the language's dictionary. */
  payload: string;
  /** Ed25519 over the canonical JSON, base64url. */
  signature: string;
}

const LARGEST_FACTS = 16_384;

/** English came first and has no mark of its own, in the name as in the code. */
const nameOf = (language: Language): string => (language === 'en' ? 'cotyla certificate 1' : `cotyla certificate 1 ${language}`);

/** Facts are pairs in printed order, so plain JSON of them has one form only; the name keeps a signature to its use. */
export function canonicalFacts(facts: PrintedFacts, language: Language): string {
  return JSON.stringify([nameOf(language), ...facts.map(([label, value]) => [label, value])]).normalize('NFC');
}

export function signFacts(facts: PrintedFacts, language: Language, privateKeyPem: string): SignedFacts {
  const bytes = Buffer.from(canonicalFacts(facts, language));
  if (bytes.length > LARGEST_FACTS) throw new RangeError('Too many facts for one code. Shorten the remarks on the certificate.');
  return {
    language,
    payload: deflateRawSync(bytes, { level: 9, dictionary: DICTIONARIES[language] }).toString('base64url'),
    signature: sign(null, bytes, privateKeyPem).toString('base64url'),
  };
}

/** The facts that were signed, or null where payload and signature do not belong together under this key. */
export function verifyFacts(signed: SignedFacts, publicKeyPem: string): PrintedFacts | null {
  const bytes = unpack(signed);
  if (!bytes || !verify(null, bytes, publicKeyPem, Buffer.from(signed.signature, 'base64url'))) return null;
  const [name, ...facts] = JSON.parse(bytes.toString('utf8')) as [string, ...[string, string][]];
  return name === nameOf(signed.language) ? facts : null;
}

function unpack({ language, payload }: SignedFacts): Buffer | null {
  try {
    return inflateRawSync(Buffer.from(payload, 'base64url'), { maxOutputLength: LARGEST_FACTS, dictionary: DICTIONARIES[language] });
  } catch {
    // A damaged or forged code is an answer, not a fault: it does not verify.
    return null;
  }
}

/**
 * What the QR code holds: the check page, with facts and signature behind the #, which a browser keeps to itself,
 * so that the paper can be checked with the server away and the server's log learns nothing from it.
 */
export function codeText(checkUrl: string, serial: string, { language, payload, signature }: SignedFacts): string {
  const mark = language === 'en' ? '' : `${language}.`;
  return `${checkUrl.replace(/\/$/, '')}/${serial}#${mark}${payload}.${signature}`;
}

export function readCode(text: string): SignedFacts | null {
  const [, mark, payload, signature] = /#(?:(\w\w)\.)?([A-Za-z0-9_-]+)\.([A-Za-z0-9_-]+)$/.exec(text) ?? [];
  const language = mark ?? 'en';
  return payload && signature && isLanguage(language) ? { language, payload, signature } : null;
}

const isLanguage = (code: string): code is Language => Object.hasOwn(DICTIONARIES, code);
