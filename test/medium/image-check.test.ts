import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { checkImage } from '#libs/dicom/check-image';
import type { ImageRefused } from '#libs/dicom/image-refused';
import { dicomFile, pixels16 } from './files-support/dicom-file.js';

const noise = (width: number, height: number, channels: 1 | 3 = 1) =>
  sharp(Buffer.from({ length: width * height * channels }).map((_, i) => (i * 7919) % 251), { raw: { width, height, channels } }).toColourspace(channels === 1 ? 'b-w' : 'srgb');
const six = pixels16(0, 1000, 2000, 3000, 4000, 4095);
const BASELINE = '1.2.840.10008.1.2.4.50';

const codeOf = (content: Buffer, fileName?: string) =>
  checkImage(content, fileName).then(
    () => 'accepted',
    (error: ImageRefused) => {
      expect(error.message).toMatch(/(Export|Choose|Send) /); // says what to do
      return error.code;
    },
  );

describe('a PNG or JPEG picture', () => {
  it('is known by its content and described', async () => {
    expect(await checkImage(await noise(40, 30).png().toBuffer(), 'film.png')).toEqual({ kind: 'png', width: 40, height: 30, bits: 8, channels: 1 });
    expect(await checkImage(await noise(40, 30, 3).jpeg().toBuffer(), 'FILM.JPG')).toEqual({ kind: 'jpeg', width: 40, height: 30, bits: 8, channels: 3 });
  });

  it('keeps its 16 bits', async () => {
    const deep = await noise(40, 30).toColourspace('grey16').png().toBuffer();
    expect(await checkImage(deep)).toMatchObject({ bits: 16 });
  });

  it('may be given as a path', async () => {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-image-'));
    const file = path.join(folder, 'film');
    writeFileSync(file, await noise(8, 8).png().toBuffer());
    expect(await checkImage(file)).toMatchObject({ kind: 'png' });
    rmSync(folder, { recursive: true });
  });

  it.each(['png', 'jpeg'] as const)('that was cut short is refused (%s)', async (format) => {
    const whole = await noise(400, 300).toFormat(format).toBuffer();
    for (const part of [0.5, 0.9, 0.999]) expect(await codeOf(whole.subarray(0, Math.floor(whole.length * part)))).toBe('IMAGE_TRUNCATED');
    expect(await codeOf(whole)).toBe('accepted');
  });

  it('that was damaged is refused', async () => {
    const picture = await noise(400, 300).png().toBuffer();
    picture[Math.floor(picture.length / 2)]! ^= 0xff;
    expect(await codeOf(picture)).toBe('IMAGE_TRUNCATED');
  });

  it('that claims more pixels than the memory holds is refused', async () => {
    const bomb = await sharp({ create: { width: 9000, height: 8000, channels: 3, background: '#000' } }).png().toBuffer();
    expect(await codeOf(bomb)).toBe('IMAGE_TOO_LARGE');
  });
});

describe('a file that is not what it says', () => {
  it('is refused when its name says another kind', async () => {
    const picture = await noise(8, 8).png().toBuffer();
    expect(await codeOf(picture, 'film.jpg')).toBe('EXTENSION_DIFFERS');
    expect(await codeOf(picture, 'film.dcm')).toBe('EXTENSION_DIFFERS');
    expect(await codeOf(dicomFile({ pixels: six }), 'film.png')).toBe('EXTENSION_DIFFERS');
    expect(await codeOf(picture, 'film')).toBe('accepted');
  });

  it('is taken when an X-ray system named it by the number of the image', async () => {
    expect(await codeOf(dicomFile({ pixels: six }), '1.2.826.0.1.3680043.8.498.1')).toBe('accepted');
  });

  it.each([
    ['nothing', Buffer.alloc(0)],
    ['a web page', Buffer.from('<!doctype html><title>film.png</title>')],
    ['a letter', Buffer.from('%PDF-1.7')],
    ['a moving picture', Buffer.from('GIF89a')],
  ])('is refused when it holds %s', async (_, content) => {
    expect(await codeOf(content, 'film.png')).toBe('NOT_AN_IMAGE');
  });

  it('is refused when only its first bytes look right', async () => {
    expect(await codeOf(Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(500)]))).toBe('IMAGE_TRUNCATED');
  });
});

describe('a DICOM file', () => {
  it('is described, with what it says about dog, day and view', async () => {
    expect(await checkImage(dicomFile({ pixels: six, bitsStored: 12 }), 'film.dcm')).toEqual({
      kind: 'dicom',
      width: 3,
      height: 2,
      bits: 12,
      channels: 1,
      frames: 1,
      transferSyntax: '1.2.840.10008.1.2.1',
      compressed: false,
      patientId: '0198c2e0-5d3f-7000-8000-000000000001',
      accessionNumber: 'K7Q2-00041-M',
      studyDate: '2026-05-04',
      acquisitionDate: undefined,
      modality: 'DX',
      laterality: 'B',
      viewPosition: 'VD',
      sopInstanceUid: undefined,
      spacing: { millimetres: [0.14, 0.14], at: 'detector' },
      exposureIndex: 412,
      targetExposureIndex: undefined,
      deviationIndex: -0.7,
      procedures: [],
    });
  });

  it('with a day that does not exist tells no day', async () => {
    const file = dicomFile({ pixels: six, more: [[0x0008, 0x0022, 'DA', '20260230']] });
    expect(await checkImage(file)).toMatchObject({ acquisitionDate: undefined });
  });

  it('cut short at any place is refused', async () => {
    const whole = dicomFile({ pixels: Buffer.alloc(200 * 300 * 2), rows: 200, columns: 300 });
    for (let length = 132; length < whole.length; length += length < 600 ? 1 : 4999) expect(await codeOf(whole.subarray(0, length))).not.toBe('accepted');
    expect(await codeOf(whole.subarray(0, -1))).toBe('IMAGE_TRUNCATED');
    expect(await codeOf(whole)).toBe('accepted');
  });

  it('with any one byte damaged is accepted or refused, and never breaks the program', async () => {
    const whole = dicomFile({ pixels: six });
    for (let at = 128; at < whole.length; at++)
      for (const value of [0x00, 0x5c, 0xff]) {
        const damaged = Buffer.from(whole);
        damaged[at] = value;
        expect(typeof (await codeOf(damaged))).toBe('string');
      }
  });

  it('with fewer or more pixels than its rows and columns say is refused', async () => {
    expect(await codeOf(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5) }))).toBe('IMAGE_TRUNCATED');
    expect(await codeOf(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6, 7) }))).toBe('DICOM_INCONSISTENT');
    expect(await codeOf(dicomFile({ pixels: six, rows: 0 }))).toBe('DICOM_INCONSISTENT');
    expect(await codeOf(dicomFile({ pixels: six, rows: 65_535, columns: 65_535 }))).toBe('IMAGE_TOO_LARGE');
  });

  it('of an odd number of bytes may be filled up to an even one', async () => {
    expect(await codeOf(dicomFile({ pixels: Buffer.from([1, 2, 3]), rows: 1, columns: 3, bitsAllocated: 8 }))).toBe('accepted');
  });

  it('in an unknown transfer syntax is refused', async () => {
    expect(await codeOf(dicomFile({ pixels: six, transferSyntax: '1.2.3.4' }))).toBe('DICOM_TRANSFER_SYNTAX_UNKNOWN');
  });

  it('without an image is refused', async () => {
    const file = dicomFile({ pixels: six });
    expect(await codeOf(file.subarray(0, file.length - 12 - six.length))).toBe('DICOM_WITHOUT_IMAGE');
  });

  describe('with a compressed image', () => {
    const film = async () => noise(64, 48).jpeg().toBuffer();
    const compressed = (...pixels: Buffer[]) => dicomFile({ pixels: pixels.map((p) => (p.length % 2 ? Buffer.concat([p, Buffer.alloc(1)]) : p)), transferSyntax: BASELINE, rows: 48, columns: 64, bitsAllocated: 8 });

    it('is taken when all fragments are there', async () => {
      expect(await checkImage(compressed(await film()))).toMatchObject({ compressed: true, width: 64, height: 48, bits: 8 });
      const jpeg = await film();
      expect(await codeOf(compressed(jpeg.subarray(0, 400), jpeg.subarray(400)))).toBe('accepted');
    });

    it('is refused when it was cut short at any place', async () => {
      const whole = compressed(await film());
      for (let cut = 1; cut < 700; cut += 23) expect(await codeOf(whole.subarray(0, -cut))).not.toBe('accepted');
    });

    it('is refused when a fragment lost its end, or holds something else', async () => {
      const jpeg = await film();
      expect(await codeOf(compressed(jpeg.subarray(0, -100)))).toBe('IMAGE_TRUNCATED');
      expect(await codeOf(compressed(Buffer.from('not a picture at all')))).toBe('DICOM_INCONSISTENT');
      expect(await codeOf(dicomFile({ pixels: six, transferSyntax: BASELINE }))).toBe('DICOM_INCONSISTENT');
    });
  });
});
