import { createHash, randomUUID } from 'node:crypto';

/** DICOM PS3.5 annex B.2: a UUID as a number below 2.25 is a UID that needs nobody's leave. */
export const uidOf = (uuid: string): string => `2.25.${BigInt(`0x${uuid.replaceAll('-', '')}`)}`;
export const newUid = (): string => uidOf(randomUUID());

/** Of these words always the same. */
export const namedUid = (...words: string[]): string => uidOf(uuidFrom(createHash('sha256').update(JSON.stringify(words)).digest()));

/** RFC 9562 section 5.8: a UUID whose bits are an application's own. */
export function uuidFrom(bytes: Buffer): string {
  const own = Buffer.from(bytes.subarray(0, 16));
  own[6] = (own[6]! & 0x0f) | 0x80;
  own[8] = (own[8]! & 0x3f) | 0x80;
  return own.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** The UUID that such a UID was made of; undefined for any other. */
export function uuidOf(uid: string): string | undefined {
  const digits = /^2\.25\.(\d{1,39})$/.exec(uid)?.[1];
  if (!digits) return undefined;
  const hex = BigInt(digits).toString(16).padStart(32, '0');
  return hex.length === 32 ? hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5') : undefined;
}

export const isUid = (text: string | undefined): text is string => text !== undefined && /^[0-2](\.(0|[1-9]\d*))+$/.test(text) && text.length <= 64;

export const sopClasses = {
  dxForPresentation: '1.2.840.10008.5.1.4.1.1.1.1',
  dxForProcessing: '1.2.840.10008.5.1.4.1.1.1.1.1',
  cr: '1.2.840.10008.5.1.4.1.1.1',
  secondaryCapture: '1.2.840.10008.5.1.4.1.1.7',
} as const;

/** Names this program in the files it writes. */
export const IMPLEMENTATION = { uid: '2.25.87423006366373777590468379019719928761', version: 'COTYLA_1' };
