import { proposes } from './dry-run.js';
import { readExamples } from './examples/read.js';
import { fact } from './examples/random-fact.js';

const { named, rules } = readExamples();
const booking = (visit: string, day: string) => fact(
  'visitBooked', { visit, day, start: '08:00', where: 'p-mill', operator: 'op', room: 'r' },
  { id: 'proposed', at: '2026-11-25T08:09:00.000Z' },
);

describe('a booking judged before it is made', () => {
  const { facts } = named('one day too young');
  const unbooked = facts.filter((one) => one.type !== 'visitBooked');
  const now = '2026-11-25T08:10:00.000Z';
  const visit = unbooked.find((one) => one.type === 'visitOpened')?.visit ?? '';

  it('is refused one day too early, with the day from which it would do', () => {
    const [hold] = proposes(unbooked, [booking(visit, '2026-11-25')], now, rules).filter((one) => one.code === 'TOO_YOUNG');
    expect(hold?.detail).toEqual({ earliestDate: '2026-11-26', daysShort: 1 });
  });

  it('is not refused for age on the first day that is late enough', () => {
    const codes = proposes(unbooked, [booking(visit, '2026-11-26')], now, rules).map((one) => one.code);
    expect(codes).not.toContain('TOO_YOUNG');
  });

  it('is not refused for what a booking is there to bring about', () => {
    const { facts: wanted, now: then } = named('referral expired without an answer');
    expect(proposes(wanted, [booking('v2', '2026-12-07')], then, rules)).toEqual([]);
  });

  it('is refused inside the rest days', () => {
    const { facts: rested, now: then } = named('second visit booked inside the rest days');
    const before = rested.filter((one) => !(one.type === 'visitBooked' && one.visit === 'v90'));
    expect(proposes(before, [booking('v90', '2026-12-08')], then, rules).map((one) => one.code)).toEqual(['REST_DAYS']);
    expect(proposes(before, [booking('v90', '2026-12-09')], then, rules)).toEqual([]);
  });
});
