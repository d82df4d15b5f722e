import { DemoDays } from './demo-days.js';

const zone = 'Europe/Vienna';
const lane = [-170, -130, -90, 15, 120];

describe('days of the demo', () => {
  it.each(['2026-11-25T09:27:00Z', '2026-11-24T23:00:00Z', '2026-11-24T23:02:00Z', '2026-11-25T22:58:00Z', '2026-03-29T00:59:00Z', '2026-07-05T03:10:00Z'])(
    'keep all slots of a lane inside today and apart, at %s',
    (now) => {
      const days = new DemoDays(new Date(now), zone);
      const starts = lane.map((m) => days.at(days.today, days.slotToday(m, lane)).getTime());
      starts.forEach((start, i) => {
        if (i > 0) expect(start - starts[i - 1]!).toBeGreaterThanOrEqual(30 * 60_000);
      });
      expect(starts[0]!).toBeGreaterThanOrEqual(days.at(days.today, '00:00').getTime());
      expect(days.slotToday(120, lane) <= '23:30').toBe(true);
    },
  );

  it('let nothing of today have happened yesterday', () => {
    const days = new DemoDays(new Date('2026-11-24T23:00:01Z'), zone);
    expect(days.ago(200).getTime()).toBeGreaterThanOrEqual(days.at(days.today, '00:00').getTime());
    expect(days.ago(0)).toEqual(days.now);
  });

  it('leave out weekends for other days, never for today', () => {
    const sunday = new DemoDays(new Date('2026-11-22T10:00:00Z'), zone);
    expect([sunday.day(0), sunday.day(-1), sunday.day(6)]).toEqual(['2026-11-22', '2026-11-20', '2026-11-30']);
  });
});
