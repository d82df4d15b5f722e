import fc from 'fast-check';
import { findProtocol } from './catalogue.js';
import { checkReading } from './check-reading.js';
import type { JointReading } from './types.js';

const laxity = findProtocol('hipLaxity', '2')!;
const extended = findProtocol('hipExtended', '1')!;
const elbow = findProtocol('elbow', '1')!;

const codes = (protocol: typeof laxity, joints: JointReading[]) => checkReading(protocol, joints).map(({ code, joint, weight }) => [code, joint, weight].join(' ').trim());
const both = (left: Partial<JointReading>, right: Partial<JointReading>): JointReading[] => [
  { joint: 'left', ...left },
  { joint: 'right', ...right },
];

describe('checkReading', () => {
  it('takes a value or a coded reason in each joint', () => {
    expect(codes(laxity, both({ value: 0.38 }, { value: 0.44, findings: { arthrosis: true } }))).toEqual([]);
    expect(codes(laxity, both({ value: 0.38 }, { reason: 'gasInJoint' }))).toEqual([]);
  });

  it.each<[string, JointReading[], string[]]>([
    ['a joint left out', [{ joint: 'left', value: 0.3 }], ['JOINT_MISSING right refuse']],
    ['a joint entered twice', [...both({ value: 0.3 }, { value: 0.3 }), { joint: 'left', value: 0.3 }], ['JOINT_TWICE left refuse']],
    ['a value beside a reason', both({ value: 0.3, reason: 'gasInJoint' }, { value: 0.3 }), ['VALUE_AND_REASON left refuse']],
    ['neither value nor reason', both({}, { value: 0.3 }), ['VALUE_OR_REASON left refuse']],
    ['an unknown reason', both({ reason: 'tired' }, { value: 0.3 }), ['REASON_UNKNOWN left refuse']],
    ['a negative index', both({ value: -0.01 }, { value: 0.3 }), ['OUT_OF_RANGE left refuse']],
    ['a slipped digit', both({ value: 38 }, { value: 0.3 }), ['OUT_OF_RANGE left refuse']],
    ['a third decimal', both({ value: 0.385 }, { value: 0.3 }), ['DECIMALS left refuse']],
    ['not a number', both({ value: NaN }, { value: '0.3' }), ['NOT_A_NUMBER left refuse', 'NOT_A_NUMBER right refuse']],
    ['infinity', both({ value: Infinity }, { value: 0.3 }), ['NOT_A_NUMBER left refuse']],
    ['an unknown finding', both({ value: 0.3, findings: { colour: 'red' } }, { value: 0.3 }), ['FINDING_UNKNOWN left refuse']],
    ['a finding of the wrong kind', both({ value: 0.3, findings: { arthrosis: 'yes' } }, { value: 0.3 }), ['FINDING_WRONG left refuse']],
  ])('refuses %s', (_, joints, expected) => {
    expect(codes(laxity, joints)).toEqual(expected);
  });

  it('asks about an index above the highest published one and refuses above the hard limit', () => {
    // 1.12: Ginja et al. Acta Vet Hung 2008;56:303-312. 2.00: our own choice, no source.
    expect(codes(laxity, both({ value: 1.12 }, { value: 1.13 }))).toEqual(['ASK_HIGH right ask']);
    expect(codes(laxity, both({ value: 2 }, { value: 2.01 }))).toEqual(['ASK_HIGH left ask', 'OUT_OF_RANGE right refuse']);
  });

  it('takes every index of two decimals from 0 to 1.12', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 112 }), fc.integer({ min: 0, max: 112 }), (l, r) => {
      expect(checkReading(laxity, both({ value: l / 100 }, { value: r / 100 }))).toEqual([]);
    }));
  });

  it('wants the year of the criteria with a grade, the same on both sides', () => {
    expect(codes(extended, both({ value: 'B1', findings: { criteria: '2022' } }, { value: 'C' }))).toEqual(['FINDING_MISSING right refuse']);
    expect(codes(extended, both({ value: 'B1', findings: { criteria: '2022' } }, { value: 'C', findings: { criteria: '1991' } }))).toEqual(['SIDES_DIFFER  refuse']);
    expect(codes(extended, both({ value: 'B1', findings: { criteria: '2022' } }, { reason: 'position' }))).toEqual([]);
    expect(codes(extended, both({ value: 'F', findings: { criteria: '2022' } }, { reason: 'position' }))).toEqual(['GRADE_UNKNOWN left refuse']);
  });

  it('takes any Norberg angle beside any grade', () => {
    const graded = (value: string, norbergAngle: number) => ({ value, findings: { criteria: '2022', norbergAngle } });
    expect(codes(extended, both(graded('A', 88), graded('E', 108)))).toEqual([]);
    expect(codes(extended, both(graded('A', 188), graded('E', 108.25)))).toEqual(['FINDING_WRONG left refuse', 'FINDING_WRONG right refuse']);
  });

  it('asks when an elbow grade lies below what a primary lesion usually brings', () => {
    // absent 0, suspected 2, evident 3: Hazewinkel, WSAVA Congress 2014; schemes differ, so it is asked and not refused.
    const graded = (value: string, primaryLesion: string) => ({ value, findings: { primaryLesion } });
    expect(codes(elbow, both(graded('0', 'absent'), graded('2', 'suspected')))).toEqual([]);
    expect(codes(elbow, both(graded('1', 'suspected'), graded('2', 'evident')))).toEqual(['ASK_LESION left ask', 'ASK_LESION right ask']);
  });
});
