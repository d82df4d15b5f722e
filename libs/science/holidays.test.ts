import { holidaysOf } from './holidays.js';
import { addWorkingDays } from './working-days.js';

describe('holidaysOf', () => {
  it('gives the public holidays of England', () => {
    // 2025 and 2026 agree with the lists that surgeries publish.
    expect(holidaysOf('GB-ENG', [2025])).toEqual(['2025-01-01', '2025-04-18', '2025-04-21', '2025-05-05', '2025-05-26', '2025-08-25', '2025-12-25', '2025-12-26']);
    expect(holidaysOf('GB-ENG', [2026])).toEqual(expect.arrayContaining(['2026-12-26', '2026-12-28']));
  });

  it('moves Easter Monday with Easter', () => {
    // Easter Sundays: two algorithms and a published list agree.
    const easter = { 2024: '2024-04-01', 2025: '2025-04-21', 2026: '2026-04-06', 2027: '2027-03-29', 2028: '2028-04-17', 2029: '2029-04-02', 2030: '2030-04-22' };
    for (const [year, monday] of Object.entries(easter)) expect(holidaysOf('GB-ENG', [Number(year)])).toContain(monday);
  });

  it('knows states and their regions apart', () => {
    expect(holidaysOf('DE-BY', [2026])).not.toContain('2026-08-08');
    expect(holidaysOf('DE-BY-A', [2026])).toContain('2026-08-08');
    expect(holidaysOf('DE-BY', [2026])).not.toContain('2026-12-24');
  });

  it('lets a local list add and take away', () => {
    // Scotland's one-off holiday of 15 June 2026 (Royal Proclamation, February 2026) is not in the library.
    expect(holidaysOf('GB-SCT', [2026])).not.toContain('2026-06-15');
    const days = holidaysOf('GB-SCT', [2026], { free: ['2026-06-15'], working: ['2026-12-25'] });
    expect(days).toContain('2026-06-15');
    expect(days).not.toContain('2026-12-25');
    expect(days).toEqual([...days].sort());
    expect(holidaysOf(null, [2026], { free: ['2026-09-09'] })).toEqual(['2026-09-09']);
  });

  it('refuses regions, years and days that do not exist', () => {
    expect(() => holidaysOf('XX', [2026])).toThrow(/"XX" is no region/);
    expect(() => holidaysOf('GB-XYZ', [2026])).toThrow(/no region/);
    expect(() => holidaysOf('GB-ENG', [26])).toThrow(/1970 to 2100/);
    expect(() => holidaysOf('GB-ENG', [2026], { free: ['Midsummer'] })).toThrow(/is not a day/);
  });
});

describe('addWorkingDays', () => {
  it.each([
    // Recomputed by hand from the holidays above.
    ['GB-ENG', '2026-04-01', 5, '2026-04-10'],
    ['GB-ENG', '2026-12-23', 3, '2026-12-30'],
    ['DE-BY', '2026-12-23', 3, '2026-12-29'],
    ['SE', '2026-06-17', 3, '2026-06-22'],
  ])('%s: %s and %i working days make %s', (region, day, count, expected) => {
    expect(addWorkingDays(day, count, holidaysOf(region, [2026, 2027]))).toBe(expected);
  });

  it('waits a day longer in Sweden where midsummer eve is free', () => {
    expect(addWorkingDays('2026-06-17', 3, holidaysOf('SE', [2026], { free: ['2026-06-19'] }))).toBe('2026-06-23');
  });

  it('takes the next working day for a count of 0 on a free day', () => {
    expect(addWorkingDays('2026-06-20', 0, [])).toBe('2026-06-22');
    expect(addWorkingDays('2026-06-22', 0, [])).toBe('2026-06-22');
  });

  it('refuses counts and weeks that never end', () => {
    expect(() => addWorkingDays('2026-06-20', -1, [])).toThrow(/whole number/);
    expect(() => addWorkingDays('2026-06-20', 1, [], [1, 2, 3, 4, 5, 6, 7])).toThrow(/no working days/);
  });
});
