import { IMPLEMENTATION } from './uids.js';

/** What stands before a data set in a file (DICOM PS3.10 section 7.1); made of the image alone, so that the same image gives the same bytes. */
export function part10Header({ sopClassUid, sopInstanceUid, transferSyntax }: { sopClassUid: string; sopInstanceUid: string; transferSyntax: string }): Buffer {
  const elements = Buffer.concat([
    element(0x01, 'OB', Buffer.from([0, 1])), element(0x02, 'UI', sopClassUid), element(0x03, 'UI', sopInstanceUid), element(0x10, 'UI', transferSyntax),
    element(0x12, 'UI', IMPLEMENTATION.uid), element(0x13, 'SH', IMPLEMENTATION.version),
  ]);
  const length = Buffer.alloc(4);
  length.writeUInt32LE(elements.length);
  return Buffer.concat([Buffer.alloc(128), Buffer.from('DICM'), element(0x00, 'UL', length), elements]);
}

function element(number: number, vr: 'OB' | 'UI' | 'SH' | 'UL', value: string | Buffer): Buffer {
  const raw = Buffer.from(value as string, 'latin1');
  const body = raw.length % 2 ? Buffer.concat([raw, Buffer.from(vr === 'UI' ? '\0' : ' ')]) : raw;
  const head = Buffer.alloc(vr === 'OB' ? 12 : 8);
  head.writeUInt16LE(0x0002, 0);
  head.writeUInt16LE(number, 2);
  head.write(vr, 4, 'latin1');
  if (vr === 'OB') head.writeUInt32LE(body.length, 8);
  else head.writeUInt16LE(body.length, 6);
  return Buffer.concat([head, body]);
}
