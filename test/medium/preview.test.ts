import sharp from 'sharp';
import { checkImage } from '#libs/dicom/check-image';
import { makePreview } from '#libs/dicom/preview';
import { dicomFile, pixels16, type DicomFile } from './files-support/dicom-file.js';

async function previewOf(content: Buffer) {
  const preview = await makePreview(content, await checkImage(content));
  if (!preview.made) throw new Error(preview.sentence);
  return { ...preview, grey: [...(await sharp(preview.content).greyscale().raw().toBuffer())] };
}

const BASELINE = '1.2.840.10008.1.2.4.50';
const even = (stream: Buffer) => (stream.length % 2 ? Buffer.concat([stream, Buffer.alloc(1)]) : stream);

/** One even shade in each corner block, large enough that JPEG keeps it. */
function steps(values: number[], file: Partial<DicomFile> = {}): Buffer {
  const row = values.flatMap((value) => Array<number>(16).fill(value));
  return dicomFile({ rows: 16, columns: row.length, pixels: pixels16(...Array(16).fill(row).flat()), ...file });
}
const shades = async (content: Buffer, count: number) => {
  const { grey, width } = await previewOf(content);
  return Array.from({ length: count }, (_, i) => grey[8 * width + i * 16 + 8]);
};
const near = (expected: number[], actual: (number | undefined)[]) => actual.forEach((shade, i) => expect(Math.abs((shade ?? NaN) - expected[i]!)).toBeLessThanOrEqual(3));

describe('the preview', () => {
  it('is at most 1600 pixels long and keeps the proportions', async () => {
    const large = await sharp({ create: { width: 3200, height: 2400, channels: 3, background: '#888' } }).png().toBuffer();
    expect(await previewOf(large)).toMatchObject({ width: 1600, height: 1200, contentType: 'image/jpeg' });
  });

  it('never enlarges', async () => {
    const little = await sharp({ create: { width: 32, height: 24, channels: 3, background: '#888' } }).jpeg().toBuffer();
    expect(await previewOf(little)).toMatchObject({ width: 32, height: 24 });
  });

  it('shows a picture of 12 bits kept in 16', async () => {
    const values = Uint16Array.from({ length: 64 * 64 }, (_, i) => (i % 64 < 32 ? 100 : 4095));
    const picture = await sharp(values, { raw: { width: 64, height: 64, channels: 1 } }).toColourspace('grey16').png().toBuffer();
    const { grey } = await previewOf(picture);
    expect([grey[10]! < 5, grey[50]! > 250]).toEqual([true, true]);
  });

  it('of a DICOM file spreads the values that are there when it names no window', async () => {
    near([0, 127, 255], await shades(steps([1000, 2000, 3000]), 3));
  });

  // DICOM PS3.3 C.11.2.1.2.1, linear function, worked by hand for c = 2048, w = 2049
  it('of a DICOM file follows the window that it names', async () => {
    near([0, 64, 128, 255], await shades(steps([500, 1536, 2048, 4000], { window: { centre: 2048, width: 2049 } }), 4));
  });

  it('of a DICOM file with black and white exchanged is turned round', async () => {
    near([255, 127, 0], await shades(steps([1000, 2000, 3000], { photometric: 'MONOCHROME1' }), 3));
  });

  it('of a DICOM file with negative values is right', async () => {
    near([0, 127, 255], await shades(steps([-1000, 0, 1000], { signed: true, bitsStored: 12 }), 3));
  });

  it('of a DICOM file ignores the bits that are not in use', async () => {
    near([0, 255], await shades(steps([0x1000, 0x0fff], { bitsStored: 12 }), 2));
  });

  it('of a DICOM file of one value is even', async () => {
    const [first] = await shades(steps([7]), 1);
    expect(first).toBeGreaterThanOrEqual(0);
  });

  it('of a DICOM file that was compressed as JPEG is made', async () => {
    const jpeg = await sharp({ create: { width: 16, height: 16, channels: 3, background: '#888' } }).toColourspace('b-w').jpeg().toBuffer();
    const file = dicomFile({ pixels: [even(jpeg)], transferSyntax: BASELINE, rows: 16, columns: 16, bitsAllocated: 8, window: { centre: 128, width: 256 } });
    near([0x88], [(await previewOf(file)).grey[100]]);
  });

  it('is not made of a kind that nothing here decodes, and says so', async () => {
    const jpeg = await sharp({ create: { width: 16, height: 16, channels: 3, background: '#888' } }).toColourspace('b-w').jpeg().toBuffer();
    const file = dicomFile({ pixels: [even(jpeg)], transferSyntax: '1.2.840.10008.1.2.4.51', rows: 16, columns: 16, bitsAllocated: 8 });
    expect(await makePreview(file, await checkImage(file))).toMatchObject({ made: false, reason: 'KIND_NOT_SHOWN', sentence: expect.stringContaining('export it uncompressed') as unknown });
  });

  it('is not made of a stream that claims another size than its file, and says so', async () => {
    const jpeg = await sharp({ create: { width: 4000, height: 16, channels: 3, background: '#888' } }).toColourspace('b-w').jpeg().toBuffer();
    const file = dicomFile({ pixels: [even(jpeg)], transferSyntax: BASELINE, rows: 16, columns: 16, bitsAllocated: 8 });
    expect(await makePreview(file, await checkImage(file))).toMatchObject({ made: false, reason: 'NOT_DECODED' });
  });
});
