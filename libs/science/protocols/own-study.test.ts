import { findProtocol, installStudies } from './catalogue.js';
import { checkReading } from './check-reading.js';
import { dogsResult } from './dogs-result.js';
import { ownStudy } from './own-study.js';
import type { Protocol } from './types.js';

/** Invented: a whole number from 0 to 30 for each hip. */
const row = (): Protocol => ({
  ...structuredClone(findProtocol('hipLoaded', '1')!),
  code: 'ownHips', name: 'Own hip study (invented)', deskName: 'Hips, own',
  value: { kind: 'number', name: 'joint number', unit: '', decimals: 0, min: 0, max: 30, rangeReason: 'The sheet of the study goes from 0 to 30.' },
});

describe('a scheme’s own study', () => {
  it('is installed as data and then judged like any other', () => {
    installStudies([row()]);
    const own = findProtocol('ownHips', '1')!;
    expect(checkReading(own, [{ joint: 'left', value: 31 }, { joint: 'right', value: 4 }])[0]).toMatchObject({ code: 'OUT_OF_RANGE', joint: 'left' });
    expect(dogsResult(own, [{ joint: 'left', value: 12 }, { joint: 'right', value: 4 }])).toMatchObject({ kind: 'value', value: 12 });
    expect(dogsResult(own, [{ joint: 'left', value: 12 }, { joint: 'right', reason: 'notImaged' }]).kind).toBe('incomplete');
  });

  it('may come again unchanged, and needs a new version when it changes', () => {
    installStudies([row()]);
    expect(() => installStudies([{ ...row(), name: 'Another name' }])).toThrow(/new version/);
    installStudies([{ ...row(), version: '2', name: 'Another name' }]);
    expect(findProtocol('ownHips', '1')!.name).toBe('Own hip study (invented)');
    expect(findProtocol('ownHips', '2')!.name).toBe('Another name');
  });

  it.each<[string, (good: Protocol) => unknown, RegExp]>([
    ['no list', () => ({}), /must be a list/],
    ['a row without a code', () => [{}], /Study without a code/],
    ['an unknown view', (p) => [{ ...p, views: [{ ...p.views[0]!, code: 'side' }] }], /"ownHips": views\.0\.code/],
    ['a field nobody knows', (p) => [{ ...p, colour: 'red' }], /colour/],
    ['a range turned round', (p) => [{ ...p, value: { ...p.value, min: 30, max: 0 } }], /min 30 is not below max 0/],
    ['an infinite limit', (p) => [{ ...p, value: { ...p.value, max: Infinity } }], /value\.max/],
    ['a reason that stands twice', (p) => [{ ...p, noValue: [...p.noValue, p.noValue[0]!] }], /"loadNotHeld" stands twice/],
    ['a device that is not listed', (p) => [{ ...p, equipment: ['xray'] }], /needs "loadFrame"/],
    ['a grade that is none of its own', (p) => [{ ...p, findings: [{ code: 'spurs', kind: 'choice', label: 'Spurs', words: 'Spurs.', choices: [{ code: 'none', words: 'none' }, { code: 'seen', words: 'seen', gradeAtLeast: '7' }] }] }], /"spurs" names grade "7"/],
    ['a finding beside one that is not listed', (p) => [{ ...p, findings: [{ code: 'place', kind: 'yesNo', label: 'Place', words: 'There.', onlyWith: { finding: 'lesion', answers: ['evident'] } }] }], /"lesion" is named and not listed/],
    ['no reason for a missing picture', (p) => [{ ...p, noValue: p.noValue.slice(0, 1) }], /notImaged/],
  ])('is refused with %s, and nothing is installed', (_, bad, message) => {
    expect(() => installStudies(bad({ ...row(), version: '9' }))).toThrow(message);
    expect(findProtocol('ownHips', '9')).toBeUndefined();
  });

  it('has the form of every shipped row', () => {
    for (const [code, version] of [['hipLaxity', '1'], ['hipLaxity', '2'], ['hipExtended', '1'], ['elbow', '1'], ['elbow', '2'], ['hipLoaded', '1']] as const) {
      const shipped = findProtocol(code, version)!;
      expect(ownStudy(structuredClone(shipped))).toEqual(shipped);
    }
  });
});
