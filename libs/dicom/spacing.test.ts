import { dicomFile, pixels16 } from '#test/medium/files-support/dicom-file';
import { checkDicom } from './check-dicom.js';
import { deviationFits, deviationIndex } from './deviation-index.js';
import { animalName, latin } from './dog-attributes.js';
import { newUid, uidOf, uuidOf } from './uids.js';

type More = [number, number, string, string][];
const spacing = (more: More) => checkDicom(dicomFile({ pixels: pixels16(1, 2, 3, 4, 5, 6), more })).spacing;

// DICOM PS3.3 section 10.7.1; the file's own size at the detector is 0.14 mm
describe('the size of a pixel', () => {
  it('given once is that at the detector', () => expect(spacing([])).toEqual({ millimetres: [0.14, 0.14], at: 'detector' }));
  it('given twice and equal was not corrected', () => expect(spacing([[0x0028, 0x0030, 'DS', '0.14\\0.14']])).toEqual({ millimetres: [0.14, 0.14], at: 'detector' }));
  it('given twice and different was corrected to the dog', () => expect(spacing([[0x0028, 0x0030, 'DS', '0.12\\0.12']])).toEqual({ millimetres: [0.12, 0.12], at: 'dog' }));
  it('by an object of known size says so', () =>
    expect(spacing([[0x0028, 0x0030, 'DS', '0.12\\0.13'], [0x0028, 0x0a02, 'CS', 'FIDUCIAL']])).toEqual({ millimetres: [0.12, 0.13], at: 'dog', calibrated: 'fiducial' }));
  it('that is no number is 0, and is told to whoever measures', () => expect(spacing([[0x0028, 0x0030, 'DS', 'x\\0.13']])?.millimetres[0]).toBe(0));
});

// IEC 62494-1: ten times the decimal logarithm; 3.0 is twice the dose by definition, to the first decimal
describe('the deviation index', () => {
  it('is 0 at the target, 3 at twice of it and -3 at half', () => {
    expect([400, 800, 200].map((index) => Math.round(deviationIndex(index, 400)! * 10) / 10)).toEqual([0, 3, -3]);
  });
  it('is not computed without a target', () => expect([deviationIndex(400, undefined), deviationIndex(400, 0)]).toEqual([undefined, undefined]));
  it('that a machine sent is compared with its own indices', () => {
    expect([deviationFits(0.1, 412, 400), deviationFits(3, 412, 400), deviationFits(3, 412, undefined)]).toEqual([true, false, true]);
  });
});

it('a UID of ours leads back to what it was made of, and no other one does', () => {
  const uuid = '00c8f3de-5d3f-4000-8000-000000000001';
  expect(uuidOf(uidOf(uuid))).toBe(uuid);
  expect(uidOf(uuid).length).toBeLessThanOrEqual(64);
  expect([uuidOf('1.2.3'), uuidOf(`2.25.${'9'.repeat(39)}`), uuidOf('')]).toEqual([undefined, undefined, undefined]);
  expect(uuidOf(newUid())).toMatch(/^[0-9a-f-]{36}$/);
});

it('names stand in the Latin letters that every console has, and within their length', () => {
  expect(latin('Žížala Ørsted Straße')).toBe('Zizala Orsted Strasse');
  expect(animalName('x'.repeat(80), 'y'.repeat(80)).length).toBeLessThanOrEqual(64);
});
