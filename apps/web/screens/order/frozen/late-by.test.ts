import { lateBy } from './late-by.js';

it.each([
  ['2026-11-24T11:30:00Z', '2026-11-24T15:40:00Z', '4 hours 10 minutes'],
  ['2026-11-24T11:30:00Z', '2026-11-25T11:31:00Z', '1 day'],
  ['2026-11-24T11:30:00Z', '2026-11-26T13:40:00Z', '2 days 2 hours'],
  ['2026-11-24T11:30:00Z', '2026-11-24T11:30:20Z', 'less than a minute'],
])('from %s to %s it is late by %s', (at, rec, words) => expect(lateBy(at, rec)).toBe(words));
