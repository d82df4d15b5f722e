import { validity } from './validity.js';

describe('how long something dated still holds', () => {
  const on = (today: string) => validity('2026-12-31', today);

  it('asks a person once it has run out, and on its last day', () => {
    expect(on('2027-01-01')).toEqual({ words: 'ran out on 31 December 2026', asks: true });
    expect(on('2026-12-31')).toEqual({ words: 'runs out today', asks: true });
  });

  it('counts the days when few are left, and only names the day before that', () => {
    expect(on('2026-12-30').words).toBe('until 31 December 2026, one day more');
    expect(on('2026-11-16').words).toBe('until 31 December 2026, 45 days more');
    expect(on('2026-11-15')).toEqual({ words: 'until 31 December 2026', asks: false });
  });
});
