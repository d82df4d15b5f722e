export interface DicomFile {
  transferSyntax?: string;
  rows?: number;
  columns?: number;
  bitsAllocated?: 8 | 16;
  bitsStored?: number;
  signed?: boolean;
  photometric?: 'MONOCHROME1' | 'MONOCHROME2';
  window?: { centre: number; width: number };
  /** Little-endian pixels, or the fragments of a compressed image. */
  pixels: Buffer | Buffer[];
  more?: [group: number, element: number, vr: string, value: string][];
}

const LONG = new Set(['OB', 'OW', 'SQ', 'UN']);

/** Writes explicit little-endian elements (DICOM PS3.5 section 7.1.2). */
function element(group: number, tag: number, vr: string, value: Buffer | string | number): Buffer {
  const raw = typeof value === 'number' ? u16(value) : Buffer.from(value);
  const body = raw.length % 2 ? Buffer.concat([raw, Buffer.from(vr === 'UI' || vr === 'OB' ? '\0' : ' ')]) : raw;
  return Buffer.concat([u16(group), u16(tag), Buffer.from(vr), LONG.has(vr) ? Buffer.concat([u16(0), u32(body.length)]) : u16(body.length), body]);
}

function u16(value: number): Buffer {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16LE(value);
  return bytes;
}

function u32(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(value);
  return bytes;
}

const item = (tag: number, body: Buffer) => Buffer.concat([u16(0xfffe), u16(tag), u32(body.length), body]);

export function dicomFile(file: DicomFile): Buffer {
  const allocated = file.bitsAllocated ?? 16;
  const stored = file.bitsStored ?? allocated;
  const meta = element(2, 0x10, 'UI', file.transferSyntax ?? '1.2.840.10008.1.2.1');
  const elements: [number, number, string, string | number][] = [
    [0x0008, 0x0020, 'DA', '20260504'],
    [0x0008, 0x0050, 'SH', 'K7Q2-00041-M'],
    [0x0008, 0x0060, 'CS', 'DX'],
    [0x0010, 0x0020, 'LO', '0198c2e0-5d3f-7000-8000-000000000001'],
    [0x0018, 0x1164, 'DS', '0.14\\0.14'],
    [0x0018, 0x1411, 'DS', '412'],
    [0x0018, 0x1413, 'DS', '-0.7'],
    [0x0018, 0x5101, 'CS', 'VD'],
    [0x0020, 0x0062, 'CS', 'B'],
    [0x0028, 0x0002, 'US', 1],
    [0x0028, 0x0004, 'CS', file.photometric ?? 'MONOCHROME2'],
    [0x0028, 0x0010, 'US', file.rows ?? 2],
    [0x0028, 0x0011, 'US', file.columns ?? 3],
    [0x0028, 0x0100, 'US', allocated],
    [0x0028, 0x0101, 'US', stored],
    [0x0028, 0x0102, 'US', stored - 1],
    [0x0028, 0x0103, 'US', file.signed ? 1 : 0],
    ...(file.window ? ([[0x0028, 0x1050, 'DS', String(file.window.centre)], [0x0028, 0x1051, 'DS', String(file.window.width)]] as [number, number, string, string][]) : []),
    ...(file.more ?? []),
  ];
  elements.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const body = elements.map(([group, tag, vr, value]) => element(group, tag, vr, value));
  const pixels = Array.isArray(file.pixels)
    ? Buffer.concat([u16(0x7fe0), u16(0x10), Buffer.from('OB'), u16(0), u32(0xffffffff), item(0xe000, Buffer.alloc(0)), ...file.pixels.map((fragment) => item(0xe000, fragment)), item(0xe0dd, Buffer.alloc(0))])
    : element(0x7fe0, 0x10, allocated === 8 ? 'OB' : 'OW', file.pixels);
  const length = Buffer.concat([u16(2), u16(0), Buffer.from('UL'), u16(4), u32(meta.length)]);
  return Buffer.concat([Buffer.alloc(128), Buffer.from('DICM'), length, meta, ...body, pixels]);
}

export function pixels16(...values: number[]): Buffer {
  const bytes = Buffer.alloc(values.length * 2);
  values.forEach((value, i) => bytes.writeUInt16LE(value & 0xffff, i * 2));
  return bytes;
}
