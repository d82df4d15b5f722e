import { percentile, trend } from './memory.js';

const line = (slope: number) => Array.from({ length: 20 }, (_, minute) => ({ minute, mib: 100 + slope * minute }));

it('the trend of memory that grows is what it grows by in a minute', () => {
  expect(trend(line(3))).toBeCloseTo(3);
  expect(trend(line(0))).toBe(0);
});

it('one peak does not move the trend', () => {
  expect(trend(line(0).map((s) => (s.minute === 7 ? { ...s, mib: 900 } : s)))).toBe(0);
});

it('percentiles are values that were measured', () => {
  const hundred = Array.from({ length: 100 }, (_, i) => i + 1);
  expect([0.5, 0.95, 0.99].map((share) => percentile(hundred, share))).toEqual([50, 95, 99]);
  expect(percentile([5], 0.99)).toBe(5);
});
