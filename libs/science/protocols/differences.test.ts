import { findProtocol } from './catalogue.js';
import { differencesOf } from './differences.js';
import type { JointReading } from './types.js';

const elbow = findProtocol('elbow', '2')!;
const laxity = findProtocol('hipLaxity', '2')!;
const hips = (left: number, right: number): JointReading[] => [{ joint: 'left', value: left }, { joint: 'right', value: right }];

describe('two readings that differ', () => {
  it('with the same digits in another order are told to do so, for the joint that differs', () => {
    expect(differencesOf(laxity, hips(0.14, 0.44), hips(0.41, 0.44))).toEqual({
      joints: ['left'],
      told: ['Only the left hip differs.', 'The two values of the left hip hold the same digits in another order, so one may have been written wrongly.', 'Exchanged sides do not explain it: the other side agrees.'],
    });
  });

  it('may be the same with left and right exchanged', () => {
    expect(differencesOf(laxity, hips(0.3, 0.44), hips(0.44, 0.3)).told).toContain('The values are the same with left and right exchanged.');
    expect(differencesOf(laxity, hips(0.3, 0.44), hips(0.5, 0.6)).told).toContain('Exchanged sides do not explain it.');
  });

  it('may have one value and another size of spurs beside it', () => {
    const elbows = (osteophytes: string): JointReading[] => [{ joint: 'left', value: '2', findings: { osteophytes, primaryLesion: 'suspected' } }, { joint: 'right', value: '0' }];
    expect(differencesOf(elbow, elbows('under2'), elbows('from2to5')).told).toContain('The left elbow has the same value in both; what was found beside it differs: bone spurs, the largest.');
  });

  it('may differ in having a value at all', () => {
    const gas: JointReading[] = [{ joint: 'left', reason: 'gasInJoint' }, { joint: 'right', value: 0.44 }];
    expect(differencesOf(laxity, gas, hips(0.41, 0.44)).told).toContain('The left hip has a value in one reading and none in the other.');
  });
});
