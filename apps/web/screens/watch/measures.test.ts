import { pointsOf, withKey } from './measures.js';

it('a reading that left a measure out is no point of it', () => {
  const readings = [{ at: '10:04', values: { heartRate: 96, spo2: 97 } }, { at: '10:09', values: { spo2: 95 }, waits: true }];
  expect(pointsOf(readings, 'heartRate')).toEqual([{ at: '10:04', value: 96, waits: false }]);
  expect(pointsOf(readings, 'spo2').map((p) => [p.value, p.waits])).toEqual([[97, false], [95, true]]);
});

it.each([['', '3', '3'], ['3', '8', '38'], ['38', '.', '38.'], ['38.', '.', '38.'], ['', '.', ''], ['38.', 'delete', '38'], ['', 'delete', ''], ['12345', '6', '12345']])('the pad makes of %j and %s %j', (typed, key, then) => {
  expect(withKey(typed, key)).toBe(then);
});
