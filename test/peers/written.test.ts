import { checkDicom } from '#libs/dicom/check-dicom';
import { picturePixels } from '#libs/dicom/picture-pixels';
import { writeRadiograph, type Radiograph } from '#libs/dicom/write-radiograph';
import { drawPhantom } from '#seed/phantoms/draw-phantom';
import { aFilm } from '#test/support/film';
import { describeWithPeer } from '#test/support/peers';
import { aRadiograph, shades } from './support/a-film.js';
import { DicomPrograms } from './support/dicom-programs.js';

describeWithPeer('dciodvfy', 'what is written as DICOM', () => {
  let programs: DicomPrograms;
  beforeAll(() => { programs = new DicomPrograms(); });
  afterAll(() => programs.close());

  const told = (film: Partial<Radiograph>) => programs.verify(writeRadiograph(aRadiograph(film)));

  it.each([8, 10, 12, 14, 16])('as Digital X-Ray of %d bits has no errors', (bits) => {
    expect(told({ pixels: { rows: 31, columns: 33, bits, values: shades(31, 33, bits) } })).toEqual({ kind: 'DXImageForPresentation', errors: [] });
  });

  it('with all that a console may tell has no errors', () => {
    expect(told({ technique: { kv: 66, mas: 2.5, exposureIndex: 412, targetExposureIndex: 400, deviationIndex: 0.1 } }).errors).toEqual([]);
  });

  it('of a dog with names of other letters and of no certain birth has no errors, and no name is lost in silence', () => {
    const dog = { ...aRadiograph().dog, name: 'Žížala^\\Ψ', owner: 'Łukasz Ørsted', transponders: [], studBook: [] };
    const { born: _, ...ageless } = dog;
    expect(told({ dog: ageless }).errors).toEqual([]);
    expect(checkDicom(writeRadiograph(aRadiograph({ dog })))).toMatchObject({ patientName: 'Orsted^Zizala -', responsiblePerson: 'Orsted^Lukasz' });
  });

  it.each(['mlFlexedLeft', 'ccLeft'])('of an elbow, %s, has no errors', (view) => {
    expect(told({ region: 'elbow', side: 'left', view: { code: view, label: 'Elbow, left' }, orientation: ['CD', 'DI'] }).errors).toEqual([]);
  });

  it('from a phantom has no errors and keeps its size in the dog', async () => {
    const { png } = await drawPhantom({ view: 'vdDistraction', left: 0.4, right: 0.5, seed: 3, label: 'AR26-00417-9', date: '2026-11-29' });
    expect(told({ pixels: await picturePixels(png, 'png') })).toEqual({ kind: 'DXImageForPresentation', errors: [] });
  });

  it.each(['png', 'jpeg'] as const)('from a %s of unknown size is a captured picture, without errors', async (kind) => {
    const { spacing: _, ...film } = aRadiograph({ pixels: await picturePixels(await aFilm(kind), kind) });
    expect(programs.verify(writeRadiograph(film))).toEqual({ kind: 'SCImage', errors: [] });
  });
});
