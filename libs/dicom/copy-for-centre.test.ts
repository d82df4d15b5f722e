import sharp from 'sharp';
import { layingsOf } from '#libs/contracts/film-size';
import { aFilm } from '#test/support/film';
import { checkDicom } from './check-dicom.js';
import { copyForCentre, type ToldOfFilm } from './copy-for-centre.js';
import { greyOf } from './render-grey.js';
import { readDataSet } from './read-data-set.js';
import { sopClasses } from './uids.js';

const told: ToldOfFilm = {
  key: 'k', number: 'P-1A2B3C4D', film: 'a'.repeat(64), dog: { number: 'D-1', sex: 'male', neutered: true, breed: 'Karsby Spitz' },
  view: { code: 'vdExtended', label: 'Extended, from below', side: 'both' }, day: '2026-11-29', instance: 1,
};
const stated = { pixelMm: 0.139, right: 'left', lower: 'tail' } as const;
const copyOf = async (content: Buffer, kind: 'png' | 'jpeg', more: Partial<ToldOfFilm> = {}) => Buffer.concat((await copyForCentre(content, kind, { ...told, ...more })).content);
const deep = (from: number, span: number) => sharp(Uint16Array.from({ length: 64 * 48 }, (_, i) => from + (i % span)), { raw: { width: 64, height: 48, channels: 1 } }).toColourspace('grey16').png().toBuffer();

describe('a picture of which people have said the size', () => {
  it.each(['png', 'jpeg'] as const)('goes as a Digital X-Ray object when it is a %s, with that size and the way it lies', async (kind) => {
    const copy = await copyOf(await aFilm(kind), kind, { stated });
    expect(checkDicom(copy)).toMatchObject({ sopClassUid: sopClasses.dxForPresentation, modality: 'DX', spacing: { millimetres: [0.139, 0.139], at: 'detector' }, orientation: { right: 'left', foot: 'tail', asOfPeople: false }, laterality: 'B', viewPosition: 'VD' });
  });

  it('says that it was derived, how, and that nobody has measured the size', async () => {
    const data = readDataSet(await copyOf(await aFilm(), 'png', { stated }));
    expect(data.string('x00080008')).toMatch(/^DERIVED\\PRIMARY/);
    expect(data.string('x00082111')).toMatch(/as stated for the detector, not measured/);
    expect([data.string('x00187004'), data.string('x00181508')]).toEqual([undefined, undefined]);
  });

  it('tells a loss where there was one, and none where there was none', async () => {
    const loss = async (kind: 'png' | 'jpeg') => {
      const picture = await aFilm(kind);
      const data = readDataSet(await copyOf(picture, kind, { stated }));
      return { ...Object.fromEntries(['x00282110', 'x00282114'].map((tag) => [tag, data.string(tag)])), ratio: data.floatString('x00282112'), was: (240 * 320) / picture.length };
    };
    expect(await loss('png')).toMatchObject({ x00282110: '00', x00282114: undefined, ratio: undefined });
    const { was, ...jpeg } = await loss('jpeg');
    expect(jpeg).toMatchObject({ x00282110: '01', x00282114: 'ISO_10918_1' });
    expect(jpeg.ratio).toBeCloseTo(was, 1);
  });

  it('of 16 bits is shown by the greys that are in it', async () => {
    const picture = await deep(1000, 3000);
    const { values, scale } = await greyOf(await copyOf(picture, 'png', { stated }));
    expect([values[0], values.at(-1)]).toEqual([1000, 1000 + (64 * 48 - 1) % 3000]);
    expect(scale.window).toMatchObject({ centre: 2500, width: 3000 });
  });

  it('lies in each of the ways that people may say of its view', async () => {
    for (const [code, side] of [['vdDistraction', 'both'], ['mlFlexedLeft', 'left'], ['ccRight', 'right']] as const) {
      const ways = layingsOf(code);
      expect(ways).toHaveLength(4);
      for (const [right, lower] of ways) {
        const copy = checkDicom(await copyOf(await aFilm(), 'png', { view: { code, label: code, side }, stated: { pixelMm: 0.2, right, lower } }));
        expect(copy.orientation).toEqual({ right, foot: lower, asOfPeople: false });
      }
    }
    expect(layingsOf('other')).toEqual([]);
  });

  it('is no part of the series of those without a size', async () => {
    const seriesOf = async (more: Partial<ToldOfFilm>) => (await copyForCentre(await aFilm(), 'png', { ...told, ...more })).seriesUid;
    expect(await seriesOf({ stated })).not.toBe(await seriesOf({}));
  });
});

it('a picture of which nobody has said a size is a captured one, and has none', async () => {
  const copy = await copyOf(await aFilm(), 'png');
  expect(checkDicom(copy)).toMatchObject({ sopClassUid: sopClasses.secondaryCapture, spacing: undefined, orientation: undefined });
  expect(readDataSet(copy).elements.x00082111).toBeUndefined();
});
