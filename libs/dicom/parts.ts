import type { DataSet, Element } from 'dicom-parser';
import { vrOf } from './vr-of.js';

/** One element of a file, apart from how the file was stored: little-endian bytes, or the items of a sequence. */
export interface Part {
  /** As in `x00100010`. */
  tag: string;
  vr: string;
  value: Uint8Array | Part[][];
}

/** All elements but group 2; `leave` names what is not wanted. */
export function partsOf(data: DataSet, bigEndian: boolean, leave: ReadonlySet<string> = new Set()): Part[] {
  return Object.values(data.elements)
    .filter(({ tag }) => !tag.startsWith('x0002') && !leave.has(tag))
    .map((element) => partOf(data, element, bigEndian));
}

/** What an element is goes by its tag, where the standard knows it: a file may say anything of it, and has no word for it when it is implicit. */
function partOf(data: DataSet, element: Element, bigEndian: boolean): Part {
  const { tag, dataOffset, length, items } = element;
  const vr = vrOf(tag, element.vr);
  if (vr === 'SQ') return { tag, vr, value: (items ?? []).flatMap((item) => (item.dataSet ? [partsOf(item.dataSet, bigEndian)] : [])) };
  if (items) return { tag, vr: 'UN', value: [] };
  const bytes = data.byteArray.subarray(dataOffset, dataOffset + Math.max(0, length));
  return { tag, vr, value: bigEndian ? turned(bytes, element.vr ?? vr) : bytes };
}

/** How many bytes of a value change places between the two orders (DICOM PS3.5 section 7.3). */
const WIDTH: Record<string, number> = { AT: 2, OW: 2, SS: 2, US: 2, FL: 4, OF: 4, OL: 4, SL: 4, UL: 4, FD: 8, OD: 8, OV: 8, SV: 8, UV: 8 };

export function turned(bytes: Uint8Array, vr: string): Uint8Array {
  const width = WIDTH[vr];
  if (!width) return bytes;
  const copy = Buffer.from(bytes.subarray(0, bytes.length - (bytes.length % width)));
  return width === 2 ? copy.swap16() : width === 4 ? copy.swap32() : copy.swap64();
}
