import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { ageOn, birthFrom, oldEnough, youngestFor } from './age.js';
import { findProtocol } from './protocols/catalogue.js';

const laxity = findProtocol('hipLaxity', '2')!;
const extended = findProtocol('hipExtended', '1')!;

describe('ageOn', () => {
  it.each([
    ['2025-10-03', '2025-10-03', 0, 0],
    ['2025-10-03', '2026-10-02', 364, 11],
    ['2025-10-03', '2026-10-03', 365, 12],
    ['2025-08-31', '2025-09-29', 29, 0],
    ['2025-08-31', '2025-09-30', 30, 1],
    ['2024-02-29', '2025-02-27', 364, 11],
    ['2024-02-29', '2025-02-28', 365, 12],
    ['2024-01-31', '2024-02-29', 29, 1],
  ])('born %s, on %s: %i days, %i months', (born, day, days, months) => {
    expect(ageOn(born, day)).toEqual({ days, months });
  });

  it('refuses a day before birth and a day that does not exist', () => {
    expect(() => ageOn('2025-10-03', '2025-10-02')).toThrow(/not yet born/);
    expect(() => ageOn('2025-02-30', '2025-10-02')).toThrow(/"2025-02-30" is not a day/);
    expect(() => ageOn('3.10.2025', '2025-10-02')).toThrow(/Write it as year-month-day/);
  });
});

describe('birthFrom', () => {
  it('keeps what is not known as a span', () => {
    expect(birthFrom('2025-10-03')).toEqual({ earliest: '2025-10-03', latest: '2025-10-03', precision: 'day' });
    expect(birthFrom('2024-02')).toEqual({ earliest: '2024-02-01', latest: '2024-02-29', precision: 'month' });
    expect(birthFrom('2025')).toEqual({ earliest: '2025-01-01', latest: '2025-12-31', precision: 'year' });
    expect(() => birthFrom('spring 2025')).toThrow(/is not a birth date/);
    expect(() => birthFrom('2025-13')).toThrow(/is not a birth date/);
  });
});

describe('oldEnough', () => {
  it('counts 112 days for laxity', () => {
    // 16 weeks: from memory; Taroni et al. 2018 measured at 4 months.
    const birth = birthFrom('2026-01-01');
    expect(oldEnough(laxity, 'Aldra Water Hound', birth, '2026-04-22')).toEqual({ ok: false, tooYoung: { earliestDate: '2026-04-23', daysShort: 1, youngest: { days: 112 } } });
    expect(oldEnough(laxity, 'Aldra Water Hound', birth, '2026-04-23')).toEqual({ ok: true, age: { days: 112, months: 3 } });
  });

  it('counts 12 months for the extended view, 18 for the very large breeds', () => {
    // FCI rules, Copenhagen workshop of 18 March 2006.
    const birth = birthFrom('2025-08-31');
    expect(oldEnough(extended, 'Beagle', birth, '2026-08-31').ok).toBe(true);
    expect(oldEnough(extended, 'great  DANE', birth, '2026-08-31')).toEqual({ ok: false, tooYoung: { earliestDate: '2027-02-28', daysShort: 181, youngest: { months: 18 } } });
  });

  it('lets a scheme add its own breeds', () => {
    const rows = [{ breeds: ['Threnfold Mastiff'], youngest: { months: 20 }, source: 'invented' }];
    expect(youngestFor(extended, 'Threnfold Mastiff', rows)).toEqual({ months: 20 });
    expect(youngestFor(extended, 'Threnfold Mastiff')).toEqual({ months: 12 });
  });

  it('takes the latest day the dog may have been born on', () => {
    const known = oldEnough(laxity, 'Beagle', birthFrom('2026-01'), '2026-04-23');
    expect(known).toMatchObject({ ok: false, tooYoung: { earliestDate: '2026-05-23', daysShort: 30 } });
  });

  it('refuses a birth that ends before it begins, and a day before it', () => {
    expect(() => oldEnough(laxity, 'Beagle', { earliest: '2026-02-01', latest: '2026-01-01', precision: 'estimate' }, '2026-06-01')).toThrow(/Swap or correct/);
    expect(() => oldEnough(laxity, 'Beagle', birthFrom('2026-02'), '2026-01-31')).toThrow(/not yet born/);
  });

  it('is false the day before the earliest date and true on it, for every birth', () => {
    const anyDay = fc.integer({ min: 0, max: 20_000 }).map((n) => Temporal.PlainDate.from('2000-01-01').add({ days: n }));
    fc.assert(fc.property(anyDay, (born) => {
      const birth = birthFrom(born.toString());
      const answer = oldEnough(extended, 'Beagle', birth, born.toString());
      if (answer.ok) throw new Error('a newborn is not old enough');
      const first = Temporal.PlainDate.from(answer.tooYoung.earliestDate);
      expect(oldEnough(extended, 'Beagle', birth, first.toString())).toMatchObject({ ok: true, age: { months: 12 } });
      expect(oldEnough(extended, 'Beagle', birth, first.subtract({ days: 1 }).toString()).ok).toBe(false);
    }));
  });
});
