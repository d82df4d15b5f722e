import sharp from 'sharp';
import { checkDicom } from '#libs/dicom/check-dicom';
import { copyForCentre } from '#libs/dicom/copy-for-centre';
import { deIdentify } from '#libs/dicom/de-identify';
import { picturePixels } from '#libs/dicom/picture-pixels';
import { greyOf, renderGrey } from '#libs/dicom/render-grey';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { drawPhantom } from '#seed/phantoms/draw-phantom';
import { aFilm } from '#test/support/film';
import { describeWithPeer } from '#test/support/peers';
import { aRadiograph, shades } from './support/a-film.js';
import { DicomPrograms } from './support/dicom-programs.js';

const told = { key: 'a secret of this test', number: 'P-1A2B3C4D', film: 'f'.repeat(64), dog: { number: 'D-000123', sex: 'female', neutered: false, breed: 'Karsby Spitz' }, view: { code: 'vdExtended', label: 'Extended, from below' } } as const;
const copyOf = (film: Buffer) => Buffer.concat(deIdentify(film, told).content);

describeWithPeer('dciodvfy', 'a film without its owner', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());

  const kinds: [string, string, string[]][] = [
    ['explicit', 'dcmconv', ['+te']], ['implicit', 'dcmconv', ['+ti']], ['big-endian', 'dcmconv', ['+tb']], ['deflated', 'dcmconv', ['+td']],
    ['JPEG lossless', 'dcmcjpeg', ['+e1']], ['JPEG-LS', 'dcmcjpls', ['+el']], ['RLE', 'dcmcrle', []],
  ];
  it.each(kinds)('stored as %s is a valid object, looks the same and names nobody', async (_, program, options) => {
    const film = programs.through(program, options, writeRadiograph(aRadiograph({ technique: { kv: 66, mas: 2.5, exposureIndex: 412, targetExposureIndex: 400 } })));
    const copy = copyOf(film);
    expect(programs.verify(copy)).toEqual({ kind: 'DXImageForPresentation', errors: [] });
    expect(checkDicom(copy)).toMatchObject({
      patientName: 'P-1A2B3C4D', patientId: 'D-000123', accessionNumber: 'P-1A2B3C4D', breed: 'Karsby Spitz', neutered: false, studyDate: '2026-11-29', laterality: 'B', viewPosition: 'VD',
      spacing: { millimetres: [0.14, 0.14], at: 'detector' }, exposureIndex: 412, kv: 66, mas: 2.5, responsiblePerson: undefined,
    });
    expect(copy.toString('latin1')).not.toMatch(/Wist|Heron|AR26|999000000000123|K 77|20240102/);
    expect((await renderGrey(copy)).equals(await renderGrey(film))).toBe(true);
  });

  it.each([['png', 'hip'], ['jpeg', 'hip'], ['png', 'elbow']] as const)('that is a %s of one %s becomes a captured picture of the dog, the same to the eye', async (kind, joint) => {
    const picture = await aFilm(kind);
    const view = joint === 'hip' ? { code: 'vdExtended', label: 'Extended, from below', side: 'both' as const } : { code: 'mlFlexedLeft', label: 'Elbow, left, bent', side: 'left' as const };
    const { content, studyUid } = await copyForCentre(picture, kind, { ...told, view, day: '2026-11-29', instance: 2 });
    const copy = Buffer.concat(content);
    expect(programs.verify(copy)).toEqual({ kind: 'SCImage', errors: [] });
    expect(checkDicom(copy)).toMatchObject({ patientName: 'P-1A2B3C4D', patientId: 'D-000123', studyDate: '2026-11-29', viewPosition: joint === 'hip' ? 'VD' : 'ML', species: 'Canine', spacing: undefined, studyInstanceUid: studyUid });
    const { values } = await picturePixels(picture, kind);
    expect((await greyOf(copy)).values.every((value, i) => value === values[i])).toBe(true);
  });

  const deep = () => sharp(shades(48, 64, 12), { raw: { width: 64, height: 48, channels: 1 } }).toColourspace('grey16').png().toBuffer();
  it.each([['an 8-bit PNG', 'png', () => aFilm('png')], ['a 16-bit PNG', 'png', deep], ['a JPEG', 'jpeg', () => aFilm('jpeg')]] as const)('that is %s of a size that people have said is a valid Digital X-Ray object of each view', async (_, kind, made) => {
    const picture = await made();
    for (const [code, side, right, lower] of [['vdExtended', 'both', 'left', 'tail'], ['mlFlexedLeft', 'left', 'tail', 'toes'], ['ccRight', 'right', 'outside', 'toes']] as const) {
      const { content } = await copyForCentre(picture, kind, { ...told, view: { code, label: 'A view', side }, day: '2026-11-29', instance: 2, stated: { pixelMm: 0.139, right, lower } });
      const copy = Buffer.concat(content);
      expect(programs.verify(copy)).toEqual({ kind: 'DXImageForPresentation', errors: [] });
      expect(programs.read('dcmdump', ['+P', 'ImagerPixelSpacing', '+P', 'LossyImageCompression'], copy)).toMatch(kind === 'jpeg' ? /0\.139\\0\.139.*\[01\]/s : /0\.139\\0\.139.*\[00\]/s);
      const [{ values }, theirs] = [await picturePixels(picture, kind), await greyOf(copy)];
      expect(theirs.values.every((value, i) => value === values[i])).toBe(true);
    }
  });

  it('drawn as a phantom of known size is a Digital X-Ray object to the centre too', async () => {
    const { png } = await drawPhantom({ view: 'vdDistraction', left: 0.4, right: 0.5, seed: 3, label: 'P-1A2B3C4D', date: '2026-11-29' });
    expect(programs.verify(copyOf(writeRadiograph(aRadiograph({ pixels: await picturePixels(png, 'png') }))))).toEqual({ kind: 'DXImageForPresentation', errors: [] });
  });
});
