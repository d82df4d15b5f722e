import fc from 'fast-check';
import { allProtocols, findProtocol } from './catalogue.js';
import { countingReading, type AcceptedReading } from './counting-reading.js';

const laxity = findProtocol('hipLaxity', '2')!;
const read = (id: string, study: string, acceptedAt: string, reading: 'first' | 'second' = 'first'): AcceptedReading => ({ id, study, acceptedAt, reading });

describe('the reading that counts', () => {
  it('is the first that was accepted, not a later examination of the same dog', () => {
    expect(countingReading(laxity, [read('later', 's2', '2026-06-01T10:00:00Z'), read('first', 's1', '2026-01-01T10:00:00Z')])?.id).toBe('first');
  });

  it('is the second reading after an appeal in the first examination', () => {
    const readings = [read('first', 's1', '2026-01-01T10:00:00Z'), read('later', 's2', '2026-01-15T10:00:00Z'), read('second', 's1', '2026-02-01T10:00:00Z', 'second')];
    expect(countingReading(laxity, readings)?.id).toBe('second');
  });

  it('is the centre’s own newer version after an amendment', () => {
    expect(countingReading(laxity, [read('old', 's1', '2026-01-01T10:00:00Z'), read('new', 's1', '2026-01-03T10:00:00Z')])?.id).toBe('new');
  });

  it('is none where nothing was accepted', () => {
    expect(countingReading(laxity, [])).toBeUndefined();
  });

  it('does not depend on the values, nor on the order in which readings are given', () => {
    const readings = fc.uniqueArray(
      fc.record({ id: fc.uuid(), study: fc.constantFrom('s1', 's2', 's3'), acceptedAt: fc.date({ min: new Date('2026-01-01'), max: new Date('2026-12-31'), noInvalidDate: true }).map((d) => d.toISOString()), reading: fc.constantFrom('first' as const, 'second' as const), value: fc.double({ min: 0, max: 2, noNaN: true }) }),
      { selector: (r) => r.id, maxLength: 8 },
    );
    fc.assert(
      fc.property(fc.constantFrom(...allProtocols()), readings, fc.double({ min: 0, max: 2, noNaN: true }), (protocol, all, value) => {
        const counts = countingReading(protocol, all)?.id;
        expect(countingReading(protocol, [...all].reverse())?.id).toBe(counts);
        expect(countingReading(protocol, all.map((r) => ({ ...r, value })))?.id).toBe(counts);
      }),
    );
  });
});
