import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { checkDicom, type CheckedDicom } from '#libs/dicom/check-dicom';
import { deIdentify } from '#libs/dicom/de-identify';
import { ImageRefused } from '#libs/dicom/image-refused';
import { greyOf } from '#libs/dicom/render-grey';
import { describeWithPeer } from '#test/support/peers';
import { DicomPrograms } from './support/dicom-programs.js';

const told = { key: 'k', number: 'P-1A2B3C4D', film: 'f', dog: { number: 'D-1', sex: 'male', neutered: true, breed: 'Karsby Spitz' } } as const;

/** Those that are grey and of one frame. */
const GREY = [
  'test_files/693_J2KI.dcm', 'test_files/CT_small.dcm', 'test_files/J2K_pixelrep_mismatch.dcm', 'test_files/JPEG2000.dcm', 'test_files/MR_small.dcm', 'test_files/MR_small_RLE.dcm',
  'test_files/MR_small_bigendian.dcm', 'test_files/MR_small_expb.dcm', 'test_files/MR_small_implicit.dcm', 'test_files/MR_small_jp2klossless.dcm', 'test_files/MR_small_jpeg_ls_lossless.dcm', 'test_files/image_dfl.dcm',
];
/** Names as pydicom reads them. */
const NAMES: Record<string, string> = {
  chrArab: 'قباني^لنزار', chrFren: 'Buc^Jérôme', chrFrenMulti: 'Buc^Jérôme', chrGerm: 'Äneas^Rüdiger', chrGreek: 'Διονυσιος', chrH31: 'Yamada^Tarou=山田^太郎=やまだ^たろう', chrH32: 'ﾔﾏﾀﾞ^ﾀﾛｳ=山田^太郎=やまだ^たろう',
  chrHbrw: 'שרון^דבורה', chrI2: 'Hong^Gildong=洪^吉洞=홍^길동', chrRuss: 'Люкceмбypг', chrX1: 'Wang^XiaoDong=王^小東=', chrX2: 'Wang^XiaoDong=王^小东=',
};

/** Files that nobody here wrote, of scanners, archives and other people's libraries. */
describeWithPeer('python3-pydicom', 'of the samples of pydicom', (samples) => describeWithPeer('gdcmconv', 'a file', () => {
  const read = (name: string) => readFileSync(path.join(samples, name));
  function outcome(name: string): CheckedDicom | ImageRefused {
    try {
      return checkDicom(read(name));
    } catch (error) {
      if (error instanceof ImageRefused) return error;
      throw error;
    }
  }

  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());

  it('is taken, or refused by a sentence, whatever it is', () => {
    const files = readdirSync(samples, { recursive: true, encoding: 'utf8' }).filter((name) => /\.(dcm|gz)$|DICOMDIR/.test(name) && !/tests\/\d/.test(name));
    expect(files.length).toBeGreaterThan(80);
    for (const name of files) expect(outcome(name)).toBeDefined();
  });

  it.each(GREY)('%s looks as gdcm unpacks it, and so does its copy for a centre', async (name) => {
    const { values } = await greyOf(read(name));
    const theirs = (await greyOf(programs.through('gdcmconv', ['--raw'], read(name)))).values;
    expect(Buffer.from(values.buffer).equals(Buffer.from(theirs.buffer))).toBe(true);
    const copy = (await greyOf(Buffer.concat(deIdentify(read(name), told).content))).values;
    expect(Buffer.from(copy.buffer).equals(Buffer.from(values.buffer))).toBe(true);
  });

  it.each(Object.entries(NAMES))('with a name in the letters of %s tells the name', (name, words) => expect(outcome(`charset_files/${name}.dcm`)).toMatchObject({ patientName: words }));

  it.each([['JPEG-lossy', '1.2.840.10008.1.2.4.51'], ['JPGExtended', '1.2.840.10008.1.2.4.51']])('%s, which cannot be shown here, is kept whole', (name, transferSyntax) => expect(outcome(`test_files/${name}.dcm`)).toMatchObject({ kind: 'dicom', transferSyntax }));

  it.each([['MR_truncated', 'IMAGE_TRUNCATED'], ['rtplan', 'DICOM_WITHOUT_IMAGE'], ['MR_small_padded', 'DICOM_INCONSISTENT'], ['rtdose', 'DICOM_INCONSISTENT'], ['liver_1frame', 'DICOM_INCONSISTENT'], ['reportsi', 'DICOM_WITHOUT_IMAGE']])('%s is refused: %s', (name, code) =>
    expect(outcome(`test_files/${name}.dcm`)).toMatchObject({ name: 'ImageRefused', code }));

  it('whose code stream claims another size than its header is taken by nobody’s decoder', async () => {
    await expect(greyOf(read('test_files/JPEG2000-embedded-sequence-delimiter.dcm'))).rejects.toThrow('another size');
  });
}));
