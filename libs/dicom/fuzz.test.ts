import { crc32, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import sharp from 'sharp';
import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { decoderFor } from './charsets.js';
import { checkDicom } from './check-dicom.js';
import { checkImage, type CheckedImage } from './check-image.js';
import { deIdentify } from './de-identify.js';
import { filmPixels } from './film-pixels.js';
import { ImageRefused } from './image-refused.js';
import { mediaDirectory, mediaName } from './media-directory.js';
import { picturePixels } from './picture-pixels.js';
import { makePreview } from './preview.js';

const told = { key: 'k', number: 'P-1A2B3C4D', film: 'f', dog: { number: 'D-1', sex: 'male', neutered: true, breed: 'Karsby Spitz' } } as const;
/** Enough to find what is easily found, on every run other inputs; a failure names its seed. */
const WHILE = { numRuns: 3000, interruptAfterTimeLimit: 1500, markInterruptAsFailure: false };

const plain = () => dicomFile({ pixels: pixels16(0, 1000, 2000, 3000, 4000, 4095), more: [
  [0x0008, 0x0005, 'CS', 'ISO 2022 IR 13\\ISO 2022 IR 87'], [0x0008, 0x0018, 'UI', '1.2.3'], [0x0010, 0x0010, 'PN', 'Wist^Heron'], [0x0020, 0x000d, 'UI', '1.2.4'], [0x0020, 0x0020, 'CS', 'LE\\CD'],
  [0x0028, 0x1050, 'DS', '2048'], [0x0028, 0x1051, 'DS', '4096'], [0x0040, 0x0260, 'SQ', ''],
] });

/** Some of its bytes are others. */
const changed = (whole: Buffer, from = 0, most = 12) => fc.array(fc.tuple(fc.integer({ min: from, max: whole.length - 1 }), fc.nat(255)), { minLength: 1, maxLength: most }).map((changes) => {
  const content = Buffer.from(whole);
  for (const [at, value] of changes) content[at] = value;
  return content;
});

async function taken<T>(take: () => T | Promise<T>): Promise<T | undefined> {
  try {
    return await take();
  } catch (error) {
    if (error instanceof ImageRefused) return undefined;
    throw error;
  }
}

describe('a film with other bytes in it', () => {
  it('that is taken has a copy for a centre that is taken too, and a place on a medium; or it is refused', async () => {
    await fc.assert(fc.asyncProperty(changed(plain(), 132), async (content) => {
      if (!(await taken(() => checkDicom(content)))) return;
      const copy = await taken(() => deIdentify(content, told));
      if (!copy) return;
      const whole = Buffer.concat(copy.content);
      expect(checkDicom(whole)).toMatchObject({ patientName: told.number, accessionNumber: told.number, sopInstanceUid: copy.sopInstanceUid });
      expect(checkDicom(whole).responsiblePerson).toBeUndefined();
      mediaDirectory([{ name: mediaName(1), head: copy.content[0]! }], '1.9');
    }), WHILE);
  });

  it('that is taken has pixels to be looked at, or an error says that it has none', async () => {
    await fc.assert(fc.asyncProperty(changed(plain(), 132), async (content) => {
      if (await taken(() => checkDicom(content))) await filmPixels(content, 'dicom').catch((error: unknown) => expect(error).toBeInstanceOf(Error));
    }), WHILE);
  });

  it('whose elements are of other kinds than they say is read or refused', async () => {
    const whole = plain();
    const kinds = [...whole.toString('latin1').matchAll(/(?:UI|CS|LO|PN|DS|US|SQ|DA|SH)(?![A-Z])/g)].map((match) => match.index).filter((at) => at > 160);
    expect(kinds.length).toBeGreaterThan(20);
    await fc.assert(fc.asyncProperty(fc.constantFrom(...kinds), fc.constantFrom('UI', 'CS', 'PN', 'DS', 'US', 'SQ', 'OB', 'UN', 'UT', 'AT', 'FD', 'xx', '\0\0'), async (at, kind) => {
      const content = Buffer.from(whole);
      content.write(kind, at, 'latin1');
      if (await taken(() => checkDicom(content))) await taken(() => deIdentify(content, told));
    }), WHILE);
  });

  it('cut short anywhere is refused', async () => {
    const whole = plain();
    for (let length = 0; length < whole.length; length++) expect(await taken(() => checkDicom(whole.subarray(0, length)))).toBeUndefined();
  });

  it('of a way of storing that nobody knows is refused, however that is called', async () => {
    await fc.assert(fc.asyncProperty(fc.string({ unit: fc.constantFrom(...'0123456789.\\ /\0'), maxLength: 64 }), async (transferSyntax) => {
      expect(await taken(() => checkDicom(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6), transferSyntax })))).toBeUndefined();
    }), { numRuns: 300 });
  });
});

describe('letters', () => {
  it('of any set, and of none, are read without an error', () => {
    const sets = ['', 'ISO_IR 100', 'ISO_IR 192', 'GB18030', 'ISO 2022 IR 13\\ISO 2022 IR 87', '\\ISO 2022 IR 149', '\\ISO 2022 IR 159', 'ISO_IR 9999', '\\\\\\', 'constructor'];
    const bytes = fc.array(fc.oneof(fc.nat(255), fc.constantFrom(0x1b, 0x24, 0x28, 0x29, 0x42, 0x43, 0x44, 0x5e)), { maxLength: 60 }).map((list) => Uint8Array.from(list));
    fc.assert(fc.property(fc.constantFrom(...sets), bytes, (set, text) => typeof decoderFor(set).decode(text) === 'string'), WHILE);
  });
});

describe('a picture', () => {
  const pictureOf = (kind: 'png' | 'jpeg') => sharp({ create: { width: 40, height: 30, channels: 3, background: '#888' } })[kind]().toBuffer();
  const looked = async (content: Buffer, image: CheckedImage) => {
    await makePreview(content, image);
    if (image.kind !== 'dicom') await picturePixels(content, image.kind);
  };

  it.each(['png', 'jpeg'] as const)('of kind %s with other bytes in it is refused, or can be looked at', async (kind) => {
    const whole = await pictureOf(kind);
    await fc.assert(fc.asyncProperty(changed(whole, 2, 4), async (content) => {
      const image = await taken(() => checkImage(content));
      if (image) await looked(content, image);
    }), WHILE);
  });

  /** A PNG of one size that claims another; its checksums are right. */
  const claiming = (width: number, height: number, pixels: Buffer) => {
    const chunk = (name: string, body: Buffer) => {
      const named = Buffer.concat([Buffer.from(name), body]);
      const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
      length.writeUInt32BE(body.length);
      sum.writeUInt32BE(crc32(named));
      return Buffer.concat([length, named, sum]);
    };
    const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 0, 0, 0, 0]);
    head.writeUInt32BE(width, 0);
    head.writeUInt32BE(height, 4);
    return Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), chunk('IHDR', head), chunk('IDAT', pixels), chunk('IEND', Buffer.alloc(0))]);
  };

  it.each([[100_000, 100_000, 'IMAGE_TOO_LARGE'], [0x7fffffff, 1, 'IMAGE_T'], [1, 0x7fffffff, 'IMAGE_T'], [0, 0, 'IMAGE_TRUNCATED'], [4000, 4000, 'IMAGE_TRUNCATED']])('that claims %d × %d pixels and has few is refused before memory is taken', async (width, height, code) => {
    const before = process.memoryUsage().rss;
    await expect(checkImage(claiming(width, height, deflateSync(Buffer.alloc(1000))))).rejects.toMatchObject({ name: 'ImageRefused', code: expect.stringContaining(code) as string });
    expect(process.memoryUsage().rss - before).toBeLessThan(200 * 1024 * 1024);
  });

  it.each([{ progressive: true }, { palette: true, colours: 4 }, { progressive: true, palette: true }, { compressionLevel: 0 }])('that is whole is taken, however it is written: %j', async (how) => {
    const noise = { width: 301, height: 157, channels: 3, background: 'black', noise: { type: 'gaussian', mean: 100, sigma: 40 } } as const;
    for (const picture of [sharp({ create: noise }), sharp({ create: noise }).greyscale(), sharp({ create: noise }).greyscale().toColourspace('grey16'), sharp({ create: noise }).ensureAlpha()])
      expect(await checkImage(await picture.png(how).toBuffer())).toMatchObject({ kind: 'png', width: 301, height: 157 });
  });

  it('whose pixels unpack to far more than it claims is refused, or taken at its own size', async () => {
    const image = await taken(() => checkImage(claiming(10, 10, deflateSync(Buffer.alloc(200 * 1024 * 1024)))));
    expect(image === undefined || (image.width === 10 && image.height === 10)).toBe(true);
  });

  it.each(['../../etc/passwd.png', 'a\0.png', '..\\..\\x.png', `${'x'.repeat(5000)}.png`, '.png', 'con.png'])('is judged by its content, whatever path its name %j tells', async (name) => expect((await checkImage(await pictureOf('png'), name)).kind).toBe('png'));
});
