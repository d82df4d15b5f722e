import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { deIdentify } from '#libs/dicom/de-identify';
import { mediaDirectory, mediaName } from '#libs/dicom/media-directory';
import { PIXELS, readDataSet } from '#libs/dicom/read-data-set';
import { EXPLICIT } from '#libs/dicom/syntaxes';
import { newUid } from '#libs/dicom/uids';
import { CannotUnpackError, uncompressed } from '#libs/dicom/uncompressed';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { describeWithPeer } from '#test/support/peers';
import { aRadiograph, shades } from './support/a-film.js';
import { DicomPrograms } from './support/dicom-programs.js';

const told = (dog: string, film: string, number = 'P-1A2B3C4D') => ({ key: 'k', number, film, dog: { number: dog, sex: 'male', neutered: true, breed: 'Karsby Spitz' } }) as const;

describeWithPeer('dciodvfy', 'a medium', () => {
  let programs: DicomPrograms;
  beforeAll(() => {
    programs = new DicomPrograms();
    mkdirSync(path.join(programs.folder, 'DICOM'));
    const [small, series] = [shades(8, 8, 12), newUid()];
    const film = (instance: number, seriesUid = series) => writeRadiograph(aRadiograph({ instance, seriesUid, pixels: { rows: 8, columns: 8, bits: 12, values: small } }));
    const copies = [
      deIdentify(film(1), told('D-1', 'a')), deIdentify(film(2), told('D-1', 'b')), deIdentify(film(1, newUid()), told('D-1', 'c')),
      deIdentify(film(1), told('D-1', 'a', 'P-99999999')), deIdentify(film(1), told('D-2', 'd', 'P-88888888')),
    ];
    const files = copies.map(({ content }, i) => ({ name: mediaName(i + 1), head: content[0]!, content: Buffer.concat(content) }));
    for (const { name, content } of files) writeFileSync(path.join(programs.folder, name), content);
    programs.put('DICOMDIR', mediaDirectory(files, newUid()));
  });
  afterAll(() => programs.close());

  const run = (program: string, ...args: string[]) => execFileSync(program, args, { cwd: programs.folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  /** Kinds of records, and what each is known by, in the order in which one comes to them from the first. */
  const read = (file: string) => run('dcmdump', '-q', '+P', '0004,1430', '+P', '0004,1500', '+P', '0004,1511', '+P', '0010,0020', '+P', '0020,000d', '+P', '0020,000e', file).split('\n').map((line) => line.replace(/#.*/, '').trim());

  it('has a directory without errors', () => {
    expect(programs.verify(readFileSync(path.join(programs.folder, 'DICOMDIR'))).errors).toEqual([]);
  });

  it('has the directory that dcmtk makes of the same files', () => {
    const ours = read('DICOMDIR');
    copyFileSync(path.join(programs.folder, 'DICOMDIR'), path.join(programs.folder, 'ours'));
    run('dcmmkdir', '+r', '-Pgp', '+D', 'THEIRS', 'DICOM');
    expect(ours.filter((line) => line.includes('IMAGE')).length).toBe(5);
    expect([...ours].sort()).toEqual([...read('THEIRS')].sort());
  });

  it('is one that dcmtk finds its way in, and adds to', () => {
    const more = deIdentify(writeRadiograph(aRadiograph()), told('D-3', 'e', 'P-77777777'));
    writeFileSync(path.join(programs.folder, mediaName(6)), Buffer.concat(more.content));
    copyFileSync(path.join(programs.folder, 'DICOMDIR'), path.join(programs.folder, 'LONGER'));
    run('dcmmkdir', '--append', '-Pgp', '+D', 'LONGER', mediaName(6));
    expect(read('LONGER').filter((line) => line.includes('IMAGE')).length).toBe(6);
  });
});

const pixelsIn = (content: Buffer): Buffer => {
  const data = readDataSet(content);
  const { dataOffset, length } = data.elements[PIXELS]!;
  return Buffer.from(data.byteArray.subarray(dataOffset, dataOffset + length));
};

describeWithPeer('dciodvfy', 'a film on a medium', () => describeWithPeer('gdcmconv', 'that came', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());
  const plain = (bits: number) => writeRadiograph(aRadiograph({ pixels: { rows: 51, columns: 71, bits, values: shades(51, 71, bits) } }));

  it.each([
    ['JPEG lossless, first order', 'dcmcjpeg', ['+e1'], 'dcmdjpeg', [8, 12, 16], '00'], ['JPEG lossless of another order', 'dcmcjpeg', ['+el', '+sv', '4'], 'dcmdjpeg', [8, 12, 16], '00'],
    ['JPEG-LS', 'dcmcjpls', ['+el'], 'dcmdjpls', [8, 12, 16], '00'], ['RLE', 'dcmcrle', [], 'dcmdrle', [8, 12, 16], '00'], ['JPEG 2000', 'gdcmconv', ['--j2k'], undefined, [8, 12, 16], '00'],
    ['JPEG with loss', 'dcmcjpeg', ['+eb'], 'dcmdjpeg', [8], '01'], ['JPEG-LS with loss', 'dcmcjpls', ['+en', '+md', '3'], 'dcmdjpls', [8, 12, 16], '01'], ['JPEG 2000 with loss', 'gdcmconv', ['--j2k', '--lossy', '-r', '10'], undefined, [12], '01'],
  ] as const)('as %s is what the profile allows, the very pixels that dcmtk and gdcm unpack, and says of its loss what it said', async (_, program, options, back, depths, loss) => {
    for (const bits of depths) {
      const packed = programs.through(program, [...options], plain(bits));
      const ours = await uncompressed(packed);
      expect(pixelsIn(ours).equals(pixelsIn(programs.through('gdcmconv', ['--raw'], packed)))).toBe(true);
      if (back) expect(pixelsIn(ours).equals(pixelsIn(programs.through(back, [], packed)))).toBe(true);
      const copy = Buffer.concat(deIdentify(ours, told('D-1', 'a')).content);
      expect(programs.verify(copy)).toEqual({ kind: 'DXImageForPresentation', errors: [] });
      expect(programs.read('dcmdump', ['-q', '+P', '0002,0010', '+P', '0028,2110'], copy)).toMatch(new RegExp(`LittleEndianExplicit.*\\[${loss}\\]`, 's'));
      expect(readDataSet(copy).string('x00020010')).toBe(EXPLICIT);
    }
  });

  it('as JPEG of 12 bits, which nothing here unpacks, is refused by name', async () => {
    await expect(uncompressed(programs.through('dcmcjpeg', ['+ee'], plain(12)))).rejects.toThrow(CannotUnpackError);
  });
}));

/** Files that nobody here wrote: in colour, of several frames, signed. */
describeWithPeer('python3-pydicom', 'of the samples of pydicom', (samples) => describeWithPeer('gdcmconv', 'a file on a medium', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());
  const read = (name: string) => readFileSync(path.join(samples, 'test_files', `${name}.dcm`));

  it.each([
    ['693_J2KI', 'gdcmconv', ['--raw']], ['JPEG2000', 'gdcmconv', ['--raw']], ['MR_small_jp2klossless', 'gdcmconv', ['--raw']], ['MR_small_jpeg_ls_lossless', 'dcmdjpls', []], ['MR_small_RLE', 'dcmdrle', []],
    ['SC_rgb_rle', 'dcmdrle', []], ['SC_rgb_rle_2frame', 'dcmdrle', []], ['SC_rgb_rle_16bit_2frame', 'dcmdrle', []], ['SC_rgb_jpeg_dcmtk', 'dcmdjpeg', []], ['SC_rgb_small_odd_jpeg', 'dcmdjpeg', []], ['SC_rgb_dcmtk_+eb+cy+s2', 'dcmdjpeg', []],
  ])('%s has the pixels that %s unpacks', async (name, program, options) => {
    expect(pixelsIn(await uncompressed(read(name))).equals(pixelsIn(programs.through(program, options, read(name))))).toBe(true);
  });

  it.each(['JPEG-lossy', 'SC_rgb_jpeg_gdcm', 'SC_rgb_gdcm_KY', 'SC_rgb_jpeg_lossy_gdcm'])('%s, of which it is not certain what it holds, is refused', async (name) => {
    await expect(uncompressed(read(name))).rejects.toThrow(CannotUnpackError);
  });
}));
