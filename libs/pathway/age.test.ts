import { latestBirthDay, oldEnoughFrom } from './age.js';

// Youngest ages: 16 weeks for laxity and 12 months for extended views are common practice, set in each protocol's row.
describe('the age that counts', () => {
  it.each([
    [{ date: '2026-08-06', precision: 'day' as const }, '2026-08-06'],
    [{ date: '2026-02-01', precision: 'month' as const }, '2026-02-28'],
    [{ date: '2026-02', precision: 'month' as const }, '2026-02-28'],
    [{ date: '2026', precision: 'year' as const }, '2026-12-31'],
    [{ date: '2026-02-10', precision: 'estimate' as const }, '2026-08-10'],
    [{ date: '2026-02-10', precision: 'estimate' as const, latest: '2026-03-01' }, '2026-03-01'],
  ])('takes the latest day on which a dog may be born: %j', (birth, latest) => {
    expect(latestBirthDay(birth)).toBe(latest);
  });

  it('counts days and calendar months', () => {
    const birth = { date: '2024-02-29', precision: 'day' as const };
    expect(oldEnoughFrom(birth, { days: 112 })).toBe('2024-06-20');
    expect(oldEnoughFrom(birth, { months: 12 })).toBe('2025-02-28');
  });
});
