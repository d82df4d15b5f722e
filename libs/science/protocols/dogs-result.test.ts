import fc from 'fast-check';
import { findProtocol } from './catalogue.js';
import { dogsResult } from './dogs-result.js';
import { readingKey, sameReading } from './same-reading.js';
import type { JointReading, Protocol } from './types.js';

const laxity = findProtocol('hipLaxity', '2')!;
const extended = findProtocol('hipExtended', '1')!;
const elbow = findProtocol('elbow', '1')!;
const result = (protocol: Protocol, left: number | string | undefined, right: number | string | undefined) =>
  dogsResult(protocol, [
    left === undefined ? { joint: 'left', reason: 'notImaged' } : { joint: 'left', value: left },
    right === undefined ? { joint: 'right', reason: 'notImaged' } : { joint: 'right', value: right },
  ]);

describe('dogsResult', () => {
  it('lets the looser hip speak for the dog', () => {
    expect(result(laxity, 0.38, 0.44)).toMatchObject({ kind: 'value', value: 0.44, words: '0.44 (right, the looser hip)' });
    expect(result(laxity, 0.4, 0.4).words).toBe('0.40 (both hips alike)');
  });

  it('lets the worse hip give the grade, sub-grades included', () => {
    expect(result(extended, 'B2', 'C1')).toMatchObject({ kind: 'value', value: 'C1', words: 'grade C1 (right, the worse hip)' });
    expect(result(extended, 'C2', 'C').value).toBe('C2');
    expect(result(extended, 'C', 'C1').value).toBe('C');
  });

  it('says "at least" when one hip could not be read, and gives no grade when neither could', () => {
    expect(result(extended, 'C', undefined)).toMatchObject({ kind: 'atLeast', value: 'C', words: 'at least grade C (left; the right hip could not be read)' });
    expect(result(extended, undefined, undefined)).toMatchObject({ kind: 'none', words: 'No result: neither hip could be read' });
  });

  it('takes the worse elbow, never a sum, and calls one elbow alone incomplete', () => {
    expect(result(elbow, '1', '2').value).toBe('2');
    expect(result(elbow, 'BL', '0').value).toBe('BL');
    expect(result(elbow, 'BL', '1').value).toBe('1');
    expect(result(elbow, '1', undefined)).toMatchObject({ kind: 'incomplete', words: 'Incomplete: only the left elbow could be read, grade 1' });
  });

  it('is the value of one of the joints and no lower than the other', () => {
    const index = fc.integer({ min: 0, max: 200 }).map((n) => n / 100);
    fc.assert(fc.property(index, index, (left, right) => {
      expect(result(laxity, left, right).value).toBe(Math.max(left, right));
    }));
  });
});

describe('sameReading', () => {
  const keyed: JointReading[] = [
    { joint: 'left', value: 0.4, findings: { arthrosis: false } },
    { joint: 'right', reason: 'gasInJoint' },
  ];

  it('does not mind the order of entry, nor a "no" left out', () => {
    expect(sameReading(laxity, keyed, [{ joint: 'right', reason: 'gasInJoint' }, { joint: 'left', value: 0.4 }])).toBe(true);
  });

  it.each<[string, JointReading[]]>([
    ['another value', [{ joint: 'left', value: 0.41 }, keyed[1]!]],
    ['another reason', [keyed[0]!, { joint: 'right', reason: 'position' }]],
    ['another finding', [{ joint: 'left', value: 0.4, findings: { arthrosis: true } }, keyed[1]!]],
    ['sides exchanged', [{ joint: 'left', reason: 'gasInJoint' }, { joint: 'right', value: 0.4 }]],
  ])('tells %s apart', (_, other) => {
    expect(readingKey(laxity, other)).not.toBe(readingKey(laxity, keyed));
  });
});
