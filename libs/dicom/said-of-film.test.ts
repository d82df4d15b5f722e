import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { checkDicom } from './check-dicom.js';
import { saidOfFilm } from './said-of-film.js';

const said = (...more: [number, number, string, string][]) => checkDicom(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6), more })).orientation;

// DICOM PS3.3 C.7.6.1.1.1
describe('which way up a film is', () => {
  it.each([['LE\\CD', 'left', 'tail'], ['RT\\CR', 'right', 'head'], ['CD\\DI', 'tail', 'toes'], ['L\\PR', 'outside', 'body'], ['RTCR\\CDLE', 'right', 'tail'], ['CR\\V', 'head', 'belly']])('%s of a quadruped', (letters, right, foot) =>
    expect(said([0x0010, 0x2210, 'CS', 'QUADRUPED'], [0x0020, 0x0020, 'CS', letters])).toEqual({ right, foot, asOfPeople: false }));
  it('in the letters for people is said to be in those', () => expect(said([0x0020, 0x0020, 'CS', 'L\\F'])).toEqual({ right: 'left', foot: 'tail', asOfPeople: true }));
  it.each(['', 'LE', 'X\\Y', '\\', 'CD\\'])('is not known from "%s"', (letters) => expect(said([0x0010, 0x2210, 'CS', 'QUADRUPED'], [0x0020, 0x0020, 'CS', letters])).toBeUndefined());
});

// IEC 62494-1: +1 is 26 % more, −1 is 21 % less, 3 is twice
describe('an exposure against the machine’s own target', () => {
  const exposure = (index: number, target?: number, sent?: number) => saidOfFilm({ exposureIndex: index, targetExposureIndex: target, deviationIndex: sent }).exposure;
  it('is told in per cent', () => expect([exposure(800, 400), exposure(504, 400), exposure(318, 400)].map((e) => [e!.deviation, e!.percent])).toEqual([[3, 100], [1, 26], [-1, -20]]));
  it('is told by the deviation that was sent where the machine names no target', () => expect(exposure(412, undefined, -1)).toEqual({ index: 412, target: null, deviation: -1, percent: -21, fits: true }));
  it('is not told where nothing is known to compare it with', () => expect(exposure(412)).toEqual({ index: 412, target: null, deviation: null, percent: null, fits: true }));
  it('that contradicts itself is said to', () => expect(exposure(412, 400, 3)!.fits).toBe(false));
  it('is not made up', () => expect(saidOfFilm({})).toEqual({ exposure: null, orientation: null }));
});
