import fc from 'fast-check';
import { staffWordsIn } from '#libs/words/words';
import { inPlainEnglish } from '#libs/words/said-error';
import { findProtocol } from './catalogue.js';
import { checkReading } from './check-reading.js';
import type { JointReading } from './types.js';

const laxity = findProtocol('hipLaxity', '2')!;
const extended = findProtocol('hipExtended', '1')!;
const elbow = findProtocol('elbow', '1')!;
const elbow2 = findProtocol('elbow', '2')!;

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

  it.each([
    // under 2 mm: 1; 2 to 5 mm: 2; over 5 mm: 3. Tellhelm, Amort, Ondreka, WSAVA Congress 2014; EJCAP 2012;22(4).
    ['none', '0'], ['under2', '1'], ['from2to5', '2'], ['over5', '3'],
  ])('refuses an elbow below the grade that spurs of size %s make, %s', (osteophytes, least) => {
    const grades = ['0', 'BL', '1', '2', '3'];
    for (const value of grades) {
      const low = grades.indexOf(value) < grades.indexOf(least);
      expect(codes(elbow2, both({ value, findings: { osteophytes } }, { reason: 'position' }))).toEqual(low ? ['GRADE_TOO_LOW left refuse'] : []);
    }
  });

  it('says which grade the spurs make, and what to do', () => {
    expect(inPlainEnglish(checkReading(elbow2, both({ value: '1', findings: { osteophytes: 'from2to5' } }, { value: '0' }))[0]!.told)).toBe(
      'Left elbow: Bone spurs, the largest: “2 to 5 mm” cannot be grade 1: it makes grade 2 or more. Look at both in what the reader wrote; if both stand there, ask the reader.',
    );
  });

  it('takes a higher grade than the spurs make, where a lesion brings it, and only asks where nothing does', () => {
    // The worse of arthrosis and lesion: EJCAP 2012;22(4), suspected alone 2, spurs over 5 mm make it 3. Schemes differ on the step and on operated joints.
    const graded = (value: string, findings: Record<string, string | number | boolean>) => codes(elbow2, both({ value, findings }, { reason: 'position' }));
    const bare = { osteophytes: 'under2', sclerosis: 'none', primaryLesion: 'absent' };
    expect(graded('2', { ...bare, primaryLesion: 'suspected' })).toEqual([]);
    expect(graded('3', { ...bare, osteophytes: 'over5', primaryLesion: 'suspected' })).toEqual([]);
    expect(graded('3', bare)).toEqual(['ASK_UNSHOWN left ask']);
    expect(graded('3', { ...bare, step: 6 })).toEqual([]);
    expect(graded('3', { ...bare, operated: true })).toEqual([]);
    expect(graded('3', { osteophytes: 'under2', primaryLesion: 'absent' })).toEqual([]);
    expect(graded('BL', { ...bare, osteophytes: 'none' })).toEqual([]);
  });

  it('asks about denser bone below its grade, since the table was read in part', () => {
    expect(codes(elbow2, both({ value: '1', findings: { sclerosis: 'patternGone' } }, { value: '1', findings: { sclerosis: 'patternSeen' } }))).toEqual(['ASK_LESION left ask']);
  });

  it('takes the place of a lesion only where there is one', () => {
    const graded = (value: string, findings: Record<string, string | boolean>) => checkReading(elbow2, both({ value, findings }, { reason: 'position' }));
    expect(graded('3', { primaryLesion: 'evident', coronoid: true, osteochondrosis: true })).toEqual([]);
    expect(graded('0', { primaryLesion: 'absent', coronoid: false })).toEqual([]);
    const [alone] = graded('0', { primaryLesion: 'absent', coronoid: true });
    expect(alone).toMatchObject({ code: 'FINDING_ALONE', weight: 'refuse' });
    expect([inPlainEnglish(alone!.told), staffWordsIn('de').said(alone!.told)]).toEqual([
      'Left elbow: “Lesion of the coronoid process” is entered, so “Primary lesion” is “suspected” or “evident”. Correct one of the two.',
      'Linker Ellbogen: „Veränderung am Kronfortsatz“ ist eingetragen, also ist „Ursprüngliche Veränderung“ „vermutet“ oder „deutlich“. Berichtigen Sie eines von beiden.',
    ]);
    expect(graded('2', { anconeal: true }).map(({ code }) => code)).toEqual(['FINDING_ALONE']);
  });

  it('knows a step of up to 20 mm and no grade by it', () => {
    // 20 mm: our own choice, no source.
    const stepped = (step: number) => codes(elbow2, both({ value: '0', findings: { step } }, { reason: 'position' }));
    expect([stepped(6), stepped(0), stepped(20)]).toEqual([[], [], []]);
    expect([stepped(20.1), stepped(-1), stepped(NaN), stepped(1.25)]).toEqual(Array(4).fill(['FINDING_WRONG left refuse']));
  });
});
