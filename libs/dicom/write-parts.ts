import type { Part } from './parts.js';

/** Kinds whose length takes four bytes (DICOM PS3.5 section 7.1.2). */
const LONG = new Set(['OB', 'OD', 'OF', 'OL', 'OV', 'OW', 'SQ', 'SV', 'UC', 'UN', 'UR', 'UT', 'UV']);
const ENDLESS = 0xffffffff;

/** Explicit and little-endian, every length said, in the order of the tags. */
export const writeParts = (parts: readonly Part[]): Buffer => Buffer.concat([...parts].sort((a, b) => (a.tag < b.tag ? -1 : 1)).flatMap(({ tag, vr, value }) => {
  const body = Array.isArray(value) ? Buffer.concat(value.map(writeItem)) : even(value, vr);
  // PS3.5 section 6.2.2: a value that is too long for its kind is written as one of no kind
  return [elementHead(tag, !LONG.has(vr) && body.length > 0xffff ? 'UN' : vr, body.length), body];
}));

/** What stands before a compressed image; its fragments follow. */
export const endlessHead = (tag: string, vr: string): Buffer => elementHead(tag, vr, ENDLESS);

export function elementHead(tag: string, vr: string, length: number): Buffer {
  const head = Buffer.alloc(LONG.has(vr) ? 12 : 8);
  writeTag(head, tag);
  head.write(vr, 4, 'latin1');
  if (LONG.has(vr)) head.writeUInt32LE(length, 8);
  else head.writeUInt16LE(length, 6);
  return head;
}

function writeItem(parts: Part[]): Buffer {
  const body = writeParts(parts);
  const head = Buffer.alloc(8);
  writeTag(head, 'xfffee000');
  head.writeUInt32LE(body.length, 4);
  return Buffer.concat([head, body]);
}

function writeTag(head: Buffer, tag: string): void {
  head.writeUInt16LE(parseInt(tag.slice(1, 5), 16), 0);
  head.writeUInt16LE(parseInt(tag.slice(5), 16), 2);
}

function even(value: Uint8Array, vr: string): Uint8Array {
  return value.length % 2 ? Buffer.concat([value, Buffer.from(/^(UI|UN|O.)$/.test(vr) ? '\0' : ' ')]) : value;
}

/** A part of words; several values stand apart by a backslash. */
export const words = (tag: string, vr: string, ...values: string[]): Part => ({ tag, vr, value: Buffer.from(values.join('\\'), 'latin1') });

/** A sequence of one code (DICOM PS3.3 section 8.8), or of several. */
export const codes = (tag: string, ...of: { value: string; scheme: string; meaning: string }[]): Part => ({
  tag, vr: 'SQ', value: of.map(({ value, scheme, meaning }) => [words('x00080100', 'SH', value), words('x00080102', 'SH', scheme), words('x00080104', 'LO', meaning)]),
});
