import { findProtocol } from './catalogue.js';
import { changesOf } from './change.js';
import type { JointReading } from './types.js';

const laxity = findProtocol('hipLaxity', '2')!;
const hips = (left: number | undefined, right: number): JointReading[] => [left === undefined ? { joint: 'left', reason: 'gasInJoint' } : { joint: 'left', value: left }, { joint: 'right', value: right }];
const verdicts = (before: JointReading[], now: JointReading[]) => changesOf(laxity, before, now).map((c) => c.verdict);

describe('a dog examined again', () => {
  // Smallest real change 0.1018 from SD 0.15 (Arq Bras Med Vet Zootec 2020;72(4)) and ICC 0.94 (Smith et al. Am J Vet Res 1997;58:1076-1077).
  it('has changed when a value moved by more than the smallest real change, in either direction', () => {
    expect(verdicts(hips(0.4, 0.62), hips(0.51, 0.51))).toEqual(['beyond', 'beyond']);
    expect(verdicts(hips(0.4, 0.62), hips(0.5, 0.55))).toEqual(['within', 'within']);
  });

  it('says both values and the figure that they are held against', () => {
    expect(changesOf(laxity, hips(0.4, 0.62), hips(0.4, 0.55)).map((c) => c.words)).toEqual([
      'Left hip: 0.40 then, 0.40 now. There is no change.',
      'Right hip: 0.62 then, 0.55 now. The change is within the error of the reading: two looks at the same joint may differ by up to 0.10.',
    ]);
  });

  it('tells nothing of a joint without both values, nor of grades', () => {
    expect(verdicts(hips(undefined, 0.4), hips(0.3, 0.4))).toEqual(['cannotTell', 'within']);
    const grades = findProtocol('elbow', '1')!;
    const [left] = changesOf(grades, [{ joint: 'left', value: '1' }, { joint: 'right', value: '0' }], [{ joint: 'left', value: '0' }, { joint: 'right', value: '0' }]);
    expect(left).toMatchObject({ verdict: 'cannotTell', words: expect.stringContaining('grade 1 then, grade 0 now') });
  });
});
