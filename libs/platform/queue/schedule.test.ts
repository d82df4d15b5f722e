import { isStranded } from './schedule.js';

const at = (moment: string) => Date.parse(moment);
const sweep = { everySeconds: 30 };
const nightly = { cron: '15 1 * * *', timeZone: 'UTC' };
const now = at('2026-03-10T12:00:00Z');

describe('the next turn of a schedule', () => {
  it.each([
    ['an interval from now', sweep, '2026-03-10T12:00:30Z'],
    ['an interval and the difference of two clocks', sweep, '2026-03-10T12:01:20Z'],
    ['the coming night', nightly, '2026-03-11T01:15:00Z'],
    ['a turn that is overdue', sweep, '2026-03-10T11:00:00Z'],
  ])('%s is as it should be', (_, when, next) => {
    expect(isStranded(at(next), when, now)).toBe(false);
  });

  it.each([
    ['an hour off where every half minute was asked for', sweep, '2026-03-10T13:00:00Z'],
    ['a night too late', nightly, '2026-03-12T01:15:00Z'],
  ])('%s is one from before the clock was put back', (_, when, next) => {
    expect(isStranded(at(next), when, now)).toBe(true);
  });

  it('that is not known yet is left alone', () => {
    expect(isStranded(undefined, sweep, now)).toBe(false);
  });
});
