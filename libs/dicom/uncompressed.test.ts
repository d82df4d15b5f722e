import sharp from 'sharp';
import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { checkDicom } from './check-dicom.js';
import { PIXELS, readDataSet } from './read-data-set.js';
import { EXPLICIT } from './syntaxes.js';
import { CannotUnpackError, uncompressed } from './uncompressed.js';

const even = (bytes: Buffer) => (bytes.length % 2 ? Buffer.concat([bytes, Buffer.alloc(1)]) : bytes);
const greys = Buffer.from(Array.from({ length: 15 * 9 }, (_, i) => (i * 5) % 256));
const jpeg = async () => even(await sharp(greys, { raw: { width: 15, height: 9, channels: 1 } }).toColourspace('b-w').jpeg().toBuffer());
const JPEG = '1.2.840.10008.1.2.4.50';
const RLE = '1.2.840.10008.1.2.5';

const pixelsIn = (content: Buffer): Buffer => {
  const data = readDataSet(content);
  const { dataOffset, length } = data.elements[PIXELS]!;
  return Buffer.from(data.byteArray.subarray(dataOffset, dataOffset + length));
};

/** DICOM PS3.5 annex G: one plane of bytes, all of it as it is. */
function rle(bytes: Buffer): Buffer {
  const header = Buffer.alloc(64);
  header.writeUInt32LE(1, 0);
  header.writeUInt32LE(64, 4);
  return even(Buffer.concat([header, Buffer.from([bytes.length - 1]), bytes]));
}

describe('a film on its way to a medium', () => {
  it('that is not compressed stays byte for byte as it is', async () => {
    const film = dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6) });
    expect((await uncompressed(film)).equals(film)).toBe(true);
  });

  it('is unpacked to plain numbers, and is the same film', async () => {
    const stream = await jpeg();
    const film = dicomFile({ rows: 9, columns: 15, bitsAllocated: 8, pixels: [stream], transferSyntax: JPEG, more: [[0x0010, 0x0010, 'PN', 'Wist^Heron'], [0x0011, 0x0010, 'LO', 'MAKER']] });
    const plain = await uncompressed(film);
    const { transferSyntax: _, compressed: __, ...same } = checkDicom(film);
    expect(checkDicom(plain)).toMatchObject({ ...same, transferSyntax: EXPLICIT, compressed: false });
    const decoded = await sharp(stream).toColourspace('b-w').raw().toBuffer();
    expect(pixelsIn(plain).subarray(0, 15 * 9).equals(decoded)).toBe(true);
    expect(pixelsIn(plain)).toHaveLength(136); // of an even length
  });

  it('keeps what it says of its loss, and says it where only the way of packing did', async () => {
    const loss = async (...more: [number, number, string, string][]) => {
      const data = readDataSet(await uncompressed(dicomFile({ rows: 9, columns: 15, bitsAllocated: 8, pixels: [await jpeg()], transferSyntax: JPEG, more })));
      return ['x00282110', 'x00282112', 'x00282114'].map((tag) => data.string(tag));
    };
    expect(await loss([0x0028, 0x2110, 'CS', '01'], [0x0028, 0x2112, 'DS', '7.5'], [0x0028, 0x2114, 'CS', 'ISO_10918_1'])).toEqual(['01', '7.5', 'ISO_10918_1']);
    expect(await loss()).toEqual(['01', expect.stringMatching(/^\d+\.\d$/), 'ISO_10918_1']);
    const lossless = readDataSet(await uncompressed(dicomFile({ rows: 2, columns: 3, bitsAllocated: 8, pixels: [rle(Buffer.from([1, 2, 3, 4, 5, 6]))], transferSyntax: RLE })));
    expect(lossless.string('x00282110')).toBeUndefined();
  });

  it('of several frames keeps them all', async () => {
    const frames = [Buffer.from([1, 2, 3, 4, 5, 6]), Buffer.from([7, 8, 9, 10, 11, 12])];
    const film = dicomFile({ rows: 2, columns: 3, bitsAllocated: 8, pixels: frames.map(rle), transferSyntax: RLE, more: [[0x0028, 0x0008, 'IS', '2']] });
    expect(pixelsIn(await uncompressed(film)).equals(Buffer.concat(frames))).toBe(true);
  });

  it.each([['of a kind that nothing here unpacks', '1.2.840.10008.1.2.4.51', jpeg], ['of another size than it says', JPEG, async () => even(await sharp(greys, { raw: { width: 9, height: 15, channels: 1 } }).toColourspace('b-w').jpeg().toBuffer())], ['of no sense', '1.2.840.10008.1.2.4.80', () => Promise.resolve(Buffer.from('ffd8ffffffd9', 'hex'))]])(
    '%s is never left out in silence', async (_, transferSyntax, stream) => {
      const film = dicomFile({ rows: 9, columns: 15, bitsAllocated: 8, pixels: [await stream()], transferSyntax });
      await expect(uncompressed(film)).rejects.toThrow(CannotUnpackError);
    });
});
