import { constants, deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { checkDicom } from './check-dicom.js';
import { codeStreamSize } from './code-stream-size.js';
import { ImageRefused } from './image-refused.js';
import { renderGrey } from './render-grey.js';
import { unpackRle } from './rle.js';
import { DicomScan } from './scan.js';

const film = () => dicomFile({ pixels: pixels16(0, 1000, 2000, 3000, 4000, 4095), more: [[0x0008, 0x0005, 'CS', 'ISO_IR 100'], [0x0010, 0x0010, 'PN', 'Wist^Heron']] });
const packed = () => dicomFile({ pixels: [Buffer.from('ffd8ffc3000b0c0002000301011100ffd9', 'hex').subarray(0, 16)], transferSyntax: '1.2.840.10008.1.2.4.70' });

/** What came of it: taken, or refused by a sentence; anything else fails the test. */
function outcome(content: Buffer): string {
  try {
    return checkDicom(content).kind;
  } catch (error) {
    if (error instanceof ImageRefused) return error.code;
    throw error;
  }
}

describe('bytes that nobody meant', () => {
  it('are refused by a sentence, whatever they are', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 4000 }), (bytes) => outcome(Buffer.concat([Buffer.alloc(128), Buffer.from('DICM'), bytes])) !== ''), { numRuns: 400 });
  });

  // A compressed film is decoded in a thread of its own, which takes its time to start.
  it.each([['plain', film, 300], ['compressed', packed, 15]] as const)('in place of some of a %s file’s own never break the reader, nor the picture that is drawn of what it took', async (_, made, numRuns) => {
    await fc.assert(fc.asyncProperty(fc.constant(made()), fc.array(fc.tuple(fc.nat(600), fc.nat(255)), { minLength: 1, maxLength: 12 }), async (whole, changes) => {
      const content = Buffer.from(whole);
      for (const [at, value] of changes) if (128 + at < content.length) content[128 + at] = value;
      if (outcome(content) === 'dicom') await renderGrey(content).catch((error: unknown) => expect(error).toBeInstanceOf(Error));
    }), { numRuns });
  });

  it('as a code stream tell a size or none', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => ['undefined', 'object'].includes(typeof codeStreamSize(bytes))));
  });

  it('as packed planes are unpacked or refused, and never written past the end', () => {
    fc.assert(fc.property(fc.uint8Array({ minLength: 64, maxLength: 300 }), (bytes) => {
      bytes.set([1, 0, 0, 0, 64, 0, 0, 0]);
      try {
        return unpackRle(bytes, 50, 1, 1).length === 50;
      } catch (error) {
        return error instanceof RangeError;
      }
    }));
  });
});

describe('a file that lies', () => {
  const claims = (vr: string, length: number) => {
    const header = Buffer.alloc(12);
    header.writeUInt16LE(0x0009, 0);
    header.writeUInt16LE(0x0010, 2);
    header.write(vr, 4, 'latin1');
    header.writeUInt32LE(length, 8);
    const whole = film();
    const group10 = whole.indexOf(Buffer.from([0x10, 0, 0x10, 0]));
    return Buffer.concat([whole.subarray(0, group10), header, whole.subarray(group10)]);
  };

  it.each([['4 GB before the image', 'OB', 0xfffffff0], ['an endless value', 'UN', 0xffffffff], ['a sequence of 2 GB', 'SQ', 0x7fffffff]])('about %s is refused', (_, vr, length) => {
    expect(outcome(claims(vr, length))).toMatch(/^(IMAGE_TRUNCATED|DICOM_INCONSISTENT|DICOM_WITHOUT_IMAGE)$/);
  });

  it('by endless sequences in one another is refused', () => {
    const open = Buffer.from('08001111535100000ffffffffeff00e0ffffffff'.padEnd(40, '0'), 'hex');
    const deep = Buffer.concat([film().subarray(0, 160), ...Array<Buffer>(50_000).fill(open)]);
    expect(outcome(deep)).not.toBe('dicom');
  });

  it('about an image that begins nowhere keeps no more than the longest head in memory', () => {
    const scan = new DicomScan();
    const chunk = Buffer.alloc(1024 * 1024);
    scan.push(Buffer.concat([Buffer.alloc(128), Buffer.from('DICM')]));
    let pushed = 0;
    expect(() => { for (; pushed < 100; pushed++) scan.push(chunk); }).toThrow(ImageRefused);
    expect(pushed).toBeLessThan(40);
  });

  it('that deflates to more than any radiograph is refused', () => {
    const plain = dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6), transferSyntax: '1.2.840.10008.1.2.1.99' });
    const meta = plain.indexOf(Buffer.from([0x08, 0, 0x20, 0]));
    const zeros = deflateRawSync(Buffer.alloc(4 * 1024 * 1024), { finishFlush: constants.Z_FULL_FLUSH });
    expect(outcome(Buffer.concat([plain.subarray(0, meta), ...Array<Buffer>(80).fill(zeros)]))).toBe('IMAGE_TRUNCATED');
  });
});

it('a file is read alike in one piece and byte by byte', () => {
  for (const whole of [film(), packed()]) {
    const scan = new DicomScan();
    for (const byte of whole) scan.push(Buffer.from([byte]));
    let read: unknown;
    try { read = scan.end(); } catch (error) { read = error; }
    let once: unknown;
    try { once = checkDicom(whole); } catch (error) { once = error; }
    expect(read).toEqual(once);
  }
});
