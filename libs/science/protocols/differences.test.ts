import { findProtocol } from './catalogue.js';
import { differencesOf } from './differences.js';
import type { JointReading } from './types.js';

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

  it('may differ in having a value at all', () => {
    const gas: JointReading[] = [{ joint: 'left', reason: 'gasInJoint' }, { joint: 'right', value: 0.44 }];
    expect(differencesOf(laxity, gas, hips(0.41, 0.44)).told).toContain('The left hip has a value in one reading and none in the other.');
  });
});
