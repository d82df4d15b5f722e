import { createRequire } from 'node:module';
import { checkDicom } from '#libs/dicom/check-dicom';
import { greyOf, renderGrey } from '#libs/dicom/render-grey';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { describeWithPeer } from '#test/support/peers';
import { dicomFile } from '#test/medium/files-support/dicom-file';
import { aRadiograph, shades } from './support/a-film.js';
import { DicomPrograms } from './support/dicom-programs.js';

const [ROWS, COLUMNS] = [50, 71];
const plain = (bits: number) => writeRadiograph(aRadiograph({ pixels: { rows: ROWS, columns: COLUMNS, bits, values: shades(ROWS, COLUMNS, bits) } }));

describeWithPeer('storescu', 'what dcmtk has stored in another way', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());
  const through = (program: string, options: string[], content: Buffer) => programs.through(program, options, content);

  const same: [string, string, string[], number[]][] = [
    ['JPEG lossless, first order', 'dcmcjpeg', ['+e1'], [8, 12, 16]],
    ['JPEG lossless of another order', 'dcmcjpeg', ['+el', '+sv', '4'], [8, 12, 16]],
    ['JPEG-LS', 'dcmcjpls', ['+el'], [8, 12, 16]],
    ['RLE', 'dcmcrle', [], [8, 12, 16]],
    ['big-endian', 'dcmconv', ['+tb'], [8, 12, 16]],
    ['implicit', 'dcmconv', ['+ti'], [8, 12, 16]],
    ['deflated', 'dcmconv', ['+td'], [12]],
  ];
  it.each(same)('as %s looks as it did before', async (_, program, options, depths) => {
    for (const bits of depths) {
      const packed = through(program, options, plain(bits));
      expect(checkDicom(packed)).toMatchObject({ width: COLUMNS, height: ROWS, patientName: 'Wist^Heron' });
      expect((await renderGrey(packed)).equals(await renderGrey(plain(bits)))).toBe(true);
    }
  });

  const near: [string, string, string[], string, number][] = [
    ['JPEG with loss', 'dcmcjpeg', ['+eb'], 'dcmdjpeg', 8],
    ['JPEG-LS with loss', 'dcmcjpls', ['+en', '+md', '3'], 'dcmdjpls', 12],
  ];
  it.each(near)('as %s looks as dcmtk itself shows it', async (_, program, options, back, bits) => {
    const packed = through(program, options, plain(bits));
    const [ours, theirs] = await Promise.all([renderGrey(packed), renderGrey(through(back, [], packed))]);
    expect(Math.max(...ours.map((shade, i) => Math.abs(shade - theirs[i]!)))).toBeLessThanOrEqual(1);
  });

  it.each(same.slice(0, 4))('as %s and cut short anywhere is refused', (_, program, options) => {
    const whole = through(program, options, plain(12));
    for (let part = 0.05; part < 1; part += 0.05) expect(() => checkDicom(whole.subarray(0, Math.floor(whole.length * part)))).toThrow(expect.objectContaining({ name: 'ImageRefused' }));
    expect(() => checkDicom(whole.subarray(0, -1))).toThrow(expect.objectContaining({ code: 'IMAGE_TRUNCATED' }));
  });
});

describeWithPeer('gdcmconv', 'what gdcm has stored in another way', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());

  it.each([
    ['JPEG lossless', '--jpeg', '1.2.840.10008.1.2.4.70', [8, 12, 16]], ['JPEG 2000', '--j2k', '1.2.840.10008.1.2.4.90', [8, 12, 16]], ['JPEG-LS', '--jpegls', '1.2.840.10008.1.2.4.80', [8, 12, 16]],
    ['RLE', '--rle', '1.2.840.10008.1.2.5', [8, 12, 16]], ['deflated', '--deflated', '1.2.840.10008.1.2.1.99', [12]], ['implicit', '--implicit', '1.2.840.10008.1.2', [12]],
  ])('as %s has the same values', async (_, option, transferSyntax, depths) => {
    for (const bits of depths) {
      const packed = programs.through('gdcmconv', [option], plain(bits));
      expect(checkDicom(packed)).toMatchObject({ width: COLUMNS, height: ROWS, bits, transferSyntax });
      const [ours, theirs] = [await greyOf(packed), shades(ROWS, COLUMNS, bits)];
      expect(ours.values.every((value, i) => value === theirs[i])).toBe(true);
    }
  });
});

describe('JPEG 2000', () => {
  interface Encoder { getDecodedBuffer(info: object): Uint8Array; setQuality(lossless: boolean, quality: number): void; encode(): void; getEncodedBuffer(): Uint8Array }

  it.each([8, 12, 16])('of %d bits looks as it did before', async (bits) => {
    const require = createRequire(import.meta.url);
    const library = (await (require('@cornerstonejs/codec-openjpeg') as () => Promise<unknown>)()) as { J2KEncoder: new () => Encoder };
    const encoder = new library.J2KEncoder();
    const values = shades(ROWS, COLUMNS, bits);
    encoder.getDecodedBuffer({ width: COLUMNS, height: ROWS, bitsPerSample: bits, componentCount: 1, isSigned: false }).set(new Uint8Array(values.buffer));
    encoder.setQuality(true, 0);
    encoder.encode();
    const stream = Buffer.from(encoder.getEncodedBuffer());
    const even = stream.length % 2 ? Buffer.concat([stream, Buffer.alloc(1)]) : stream;
    const shape = { rows: ROWS, columns: COLUMNS, bitsAllocated: bits > 8 ? (16 as const) : (8 as const), bitsStored: bits, window: { centre: 2 ** (bits - 1), width: 2 ** bits } };
    const packed = dicomFile({ ...shape, pixels: [even], transferSyntax: '1.2.840.10008.1.2.4.90' });
    expect(checkDicom(packed)).toMatchObject({ width: COLUMNS, height: ROWS });
    expect((await renderGrey(packed)).equals(await renderGrey(plain(bits)))).toBe(true);
  });
});
