import dcmjs from 'dcmjs';

const TEXTS = new Set(['AE', 'AS', 'CS', 'DA', 'DS', 'DT', 'IS', 'LO', 'LT', 'PN', 'SH', 'ST', 'TM', 'UC', 'UI', 'UR', 'UT']);
const NUMBERS: Record<string, number> = { US: 2, UL: 4 };
/** Of VRs whose length has four bytes (DICOM PS3.5 section 7.1.2). */
const LONG = new Set(['OB', 'OD', 'OF', 'OL', 'OV', 'OW', 'SQ', 'SV', 'UC', 'UN', 'UR', 'UT', 'UV']);
const [ITEM, ITEM_END, SEQUENCE_END, UNDEFINED] = [0xfffee000, 0xfffee00d, 0xfffee0dd, 0xffffffff];
const DEEPEST = 10;

export class BrokenDataSet extends Error {}

/**
 * The words, small numbers and sequences of a message, written anew with lengths that are right; whatever else it holds goes,
 * and it is refused where a length leads out of what it stands in. The library that reads messages believes every length.
 */
export function cleanDataSet(content: Buffer, { explicit }: { explicit: boolean }): Buffer {
  return readSet(new Cursor(content), content.length, explicit, 0);
}

class Cursor {
  at = 0;
  constructor(readonly bytes: Buffer) {}

  tag(): number {
    this.need(4);
    const [group, element] = [this.bytes.readUInt16LE(this.at), this.bytes.readUInt16LE(this.at + 2)];
    this.at += 4;
    return group * 0x10000 + element;
  }

  length(bytes: 2 | 4): number {
    this.need(bytes);
    const value = bytes === 2 ? this.bytes.readUInt16LE(this.at) : this.bytes.readUInt32LE(this.at);
    this.at += bytes;
    return value;
  }

  take(length: number, end: number): Buffer {
    if (this.at + length > end) throw new BrokenDataSet('a length leads out of what it stands in');
    this.at += length;
    return this.bytes.subarray(this.at - length, this.at);
  }

  need(bytes: number): void {
    if (this.at + bytes > this.bytes.length) throw new BrokenDataSet('it ends inside an element');
  }
}

/** Up to `end`, or up to the mark that ends an item of undefined length. */
function readSet(from: Cursor, end: number, explicit: boolean, depth: number, marked = false): Buffer {
  if (depth > DEEPEST) throw new BrokenDataSet('its sequences stand too deep in each other');
  const kept: Buffer[] = [];
  while (from.at < end) {
    const tag = from.tag();
    if (marked && tag === ITEM_END) {
      from.length(4);
      return Buffer.concat(kept);
    }
    const known = vrOf(tag);
    const said = explicit ? from.take(2, end).toString('latin1') : known;
    if (explicit && !/^[A-Z]{2}$/.test(said)) throw new BrokenDataSet('it names a kind of value that there is not');
    if (explicit && LONG.has(said)) from.take(2, end);
    const length = from.length(explicit && !LONG.has(said) ? 2 : 4);
    if (said === 'SQ' || (!explicit && length === UNDEFINED)) {
      const items = readItems(from, length, end, explicit, depth);
      if (known === 'SQ') kept.push(element(tag, 'SQ', items, explicit));
      continue;
    }
    if (length === UNDEFINED) throw new BrokenDataSet('a value has no length');
    const value = from.take(length, end);
    if (known === said && isPlain(known, length)) kept.push(element(tag, known, value, explicit));
  }
  if (marked || from.at !== end) throw new BrokenDataSet('an item has no end');
  return Buffer.concat(kept);
}

function readItems(from: Cursor, length: number, outer: number, explicit: boolean, depth: number): Buffer {
  const end = length === UNDEFINED ? outer : from.at + length;
  if (end > outer) throw new BrokenDataSet('a sequence leads out of what it stands in');
  const items: Buffer[] = [];
  while (from.at < end) {
    const tag = from.tag();
    const itemLength = from.length(4);
    if (tag === SEQUENCE_END && length === UNDEFINED) return Buffer.concat(items);
    if (tag !== ITEM) throw new BrokenDataSet('a sequence holds something that is no item');
    const itemEnd = itemLength === UNDEFINED ? end : from.at + itemLength;
    if (itemEnd > end) throw new BrokenDataSet('an item leads out of its sequence');
    const body = readSet(from, itemEnd, explicit, depth + 1, itemLength === UNDEFINED);
    items.push(head(ITEM, body.length), body);
  }
  if (length === UNDEFINED) throw new BrokenDataSet('a sequence has no end');
  return Buffer.concat(items);
}

const isPlain = (vr: string, length: number): boolean => TEXTS.has(vr) || (vr in NUMBERS && length % NUMBERS[vr]! === 0);

function vrOf(tag: number): string {
  const hex = tag.toString(16).padStart(8, '0').toUpperCase();
  return dcmjs.data.DicomMetaDictionary.dictionary[`(${hex.slice(0, 4)},${hex.slice(4)})`]?.vr ?? 'UN';
}

function head(tag: number, length: number): Buffer {
  const bytes = Buffer.alloc(8);
  bytes.writeUInt16LE(tag >>> 16, 0);
  bytes.writeUInt16LE(tag & 0xffff, 2);
  bytes.writeUInt32LE(length, 4);
  return bytes;
}

function element(tag: number, vr: string, value: Buffer, explicit: boolean): Buffer {
  if (!explicit) return Buffer.concat([head(tag, value.length), value]);
  const bytes = Buffer.alloc(LONG.has(vr) ? 12 : 8);
  bytes.writeUInt16LE(tag >>> 16, 0);
  bytes.writeUInt16LE(tag & 0xffff, 2);
  bytes.write(vr, 4, 'latin1');
  if (LONG.has(vr)) bytes.writeUInt32LE(value.length, 8);
  else bytes.writeUInt16LE(value.length, 6);
  return Buffer.concat([bytes, value]);
}
