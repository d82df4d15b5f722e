import { systemClock } from './clock.js';
import { TestClock } from './test-clock.js';

describe('the test clock', () => {
  it('stands still until it is moved', () => {
    const clock = new TestClock('2026-03-29T00:59:59Z');
    expect(clock.now()).toEqual(clock.now());
    clock.advance({ seconds: 1, hours: 1, days: 2 });
    expect(clock.now().toISOString()).toBe('2026-03-31T02:00:00.000Z');
  });

  it('goes back too', () => {
    const clock = new TestClock('2026-03-29T00:00:00Z');
    clock.advance({ minutes: -1 });
    expect(clock.now().toISOString()).toBe('2026-03-28T23:59:00.000Z');
  });

  it('hands out copies, so that no caller can move it by accident', () => {
    const clock = new TestClock('2026-03-29T00:00:00Z');
    clock.now().setFullYear(1999);
    expect(clock.now().getUTCFullYear()).toBe(2026);
  });

  it('refuses a moment that is none', () => {
    expect(() => new TestClock('tomorrow')).toThrow('Not a moment in time: tomorrow');
  });
});

it('the system clock tells the present time', () => {
  const before = Date.now();
  const now = systemClock.now().getTime();
  expect(now).toBeGreaterThanOrEqual(before);
  expect(now).toBeLessThanOrEqual(Date.now());
});
