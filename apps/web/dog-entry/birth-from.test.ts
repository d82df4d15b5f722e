import { birthFrom } from './birth-from.js';

describe('a birth date that is not known to the day', () => {
  it('covers the whole month, in a leap year too', () => {
    expect(birthFrom('month', '2024-02-10', undefined)).toEqual({ earliest: '2024-02-01', latest: '2024-02-29', precision: 'month' });
  });

  it('covers the whole year', () => {
    expect(birthFrom('year', '2025-07-03', undefined)).toEqual({ earliest: '2025-01-01', latest: '2025-12-31', precision: 'year' });
  });

  it('is not complete while an estimate has one end only', () => {
    expect(birthFrom('estimate', '2025-07-03', undefined)).toBeUndefined();
    expect(birthFrom('estimate', '2025-07-03', '2025-08-01')).toEqual({ earliest: '2025-07-03', latest: '2025-08-01', precision: 'estimate' });
  });
});
