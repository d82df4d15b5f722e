import dimse from 'dcmjs-dimse';
import { BrokenDataSet, cleanDataSet } from './clean-data-set.js';
import { EXPLICIT, IMPLICIT } from './syntaxes.js';

const QUESTION = {
  SpecificCharacterSet: 'ISO_IR 100', PatientName: 'Wist^Heron', AccessionNumber: '', Rows: 12,
  ScheduledProcedureStepSequence: [{ Modality: 'DX', ScheduledProtocolCodeSequence: [{ CodeValue: 'a' }, { CodeValue: 'b' }] }], ReferencedSOPSequence: [],
};
const written = (syntax: string) => Buffer.from(new dimse.Dataset(QUESTION, syntax).getDenaturalizedDataset());
const readBack = (content: Buffer, syntax: string) => new dimse.Dataset(content, syntax).getElements();

describe.each([['explicit', EXPLICIT], ['implicit', IMPLICIT]])('a message with %s values', (way, syntax) => {
  const explicit = way === 'explicit';

  it('says the same when it was made sound', () => {
    expect(readBack(cleanDataSet(written(syntax), { explicit }), syntax)).toEqual(readBack(written(syntax), syntax));
  });

  it('is refused at every length that leads out of what it stands in, and never takes long', () => {
    const whole = written(syntax);
    let refused = 0;
    for (let at = 0; at < whole.length; at++) for (const byte of [0xff, 0x7f, 0x01]) {
      const bytes = Buffer.from(whole);
      bytes[at] = byte;
      try {
        expect(cleanDataSet(bytes, { explicit }).length).toBeLessThanOrEqual(whole.length);
      } catch (error) {
        if (!(error instanceof BrokenDataSet)) throw error;
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(whole.length / 8);
    for (let end = 1; end < 8; end++) expect(() => cleanDataSet(whole.subarray(0, end), { explicit })).toThrow(BrokenDataSet);
  });
});

it('a message leaves out what could only be bytes', () => {
  const huge = Buffer.from([0x08, 0, 0x50, 0, 0x55, 0x4e, 0, 0, 0xf0, 0xff, 0xff, 0xff, 0x41, 0x42]);
  expect(() => cleanDataSet(huge, { explicit: true })).toThrow(BrokenDataSet);
  const fits = Buffer.from(huge);
  fits.writeUInt32LE(2, 8);
  expect(cleanDataSet(fits, { explicit: true })).toEqual(Buffer.alloc(0));
});
