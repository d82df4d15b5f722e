import type { FindingField } from '#libs/contracts/common';
import { readEntry, type JointEntry, type ValueRule } from './joint-entry.js';

const index: ValueRule = { kind: 'number', unit: '', min: 0, max: 2, decimals: 2, grades: [] };
const grade: ValueRule = { kind: 'grade', unit: '', min: null, max: null, decimals: 0, grades: ['A1', 'A', 'B'] };
const field = (code: string, kind: FindingField['kind'], more: Partial<FindingField> = {}): FindingField => ({ code, words: code, kind, choices: [], unit: '', min: null, max: null, required: false, ...more });
const left = (value?: string, more: Partial<JointEntry> = {}): JointEntry => ({ joint: 'left', findings: {}, ...(value === undefined ? {} : { value }), ...more });
const read = (value: string, rule = index) => readEntry(left(value), rule, []);

describe('a joint as the reader enters it', () => {
  it('takes a value with a point or a comma', () => {
    expect(read(' 0.38 ')).toEqual({ joint: { joint: 'left', value: 0.38 }, problems: null });
    expect(read('0,38').joint?.value).toBe(0.38);
  });

  it('takes the ends of the range and refuses what lies beyond, naming the range', () => {
    expect(read('2').joint?.value).toBe(2);
    expect(read('0.00').joint?.value).toBe(0);
    expect(read('4.4').problems).toEqual({ value: '4.4 cannot be. It lies between 0.00 and 2.00.' });
    expect(read('-0.1').problems).toHaveProperty('value');
  });

  it('refuses more decimals than the study is read to instead of rounding', () => {
    expect(read('0.385').problems?.['value']).toContain('has 3 decimals');
  });

  it('refuses what is no number: two points, letters, an exponent', () => {
    for (const written of ['0.3.8', 'tight', '1e1', '.', '0x1', 'Infinity']) expect(read(written).problems?.['value']).toContain('cannot be read as a number');
  });

  it('takes a grade in small letters and answers with the spelling of the protocol', () => {
    expect(read('a1', grade).joint?.value).toBe('A1');
    expect(read('F', grade).problems).toEqual({ value: 'F is not a grade of this study. It has A1, A, B.' });
  });

  it('keeps a grade that looks like a number as text', () => {
    expect(read('0', { ...grade, grades: ['0', '1'] }).joint?.value).toBe('0');
  });

  it('takes a reason instead of a value', () => {
    expect(readEntry(left(undefined, { reason: 'gasInJoint' }), index, []).joint).toEqual({ joint: 'left', reason: 'gasInJoint' });
  });

  it('refuses a joint with neither and a joint with both', () => {
    expect(readEntry(left(), index, []).problems).toHaveProperty('value');
    expect(readEntry(left('0.38', { reason: 'gasInJoint' }), index, []).problems).toHaveProperty('reason');
  });

  it('keeps a finding that was denied apart from one that was not looked for', () => {
    const fields = [field('arthrosis', 'yesNo'), field('operated', 'yesNo')];
    expect(readEntry(left('0.38', { findings: { arthrosis: false } }), index, fields).joint?.findings).toEqual({ arthrosis: false });
  });

  it('reads a number finding within its own range', () => {
    const angle = field('norbergAngle', 'number', { unit: '°', min: 40, max: 140 });
    expect(readEntry(left('A', { findings: { norbergAngle: '103,5' } }), grade, [angle]).joint?.findings).toEqual({ norbergAngle: 103.5 });
    expect(readEntry(left('A', { findings: { norbergAngle: '10.3' } }), grade, [angle]).problems).toEqual({ norbergAngle: '10.3 cannot be. It lies between 40° and 140°.' });
  });

  it('asks for a required finding beside a value, and not beside a reason', () => {
    const criteria = field('criteria', 'choice', { words: 'Criteria of', required: true });
    expect(readEntry(left('A'), grade, [criteria]).problems).toEqual({ criteria: 'Needed beside a value: Criteria of.' });
    expect(readEntry(left(undefined, { reason: 'position' }), grade, [criteria]).problems).toBeNull();
  });
});
