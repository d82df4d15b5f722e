import { isScan } from './use-transponder-reader.js';

const every = (ms: number, n = 15) => Array.from({ length: n }, (_, i) => ({ at: i * ms }));

describe('a reader that types like a keyboard', () => {
  it('is told from a hand by its pace', () => {
    expect(isScan(every(10))).toBe(true);
    expect(isScan(every(100))).toBe(false);
  });

  it('needs fifteen digits', () => {
    expect(isScan(every(10, 14))).toBe(false);
  });

  it('survives one slow moment of the machine, not a pause', () => {
    const slowOnce = every(10).map((s, i) => ({ at: s.at + (i > 7 ? 90 : 0) }));
    const paused = every(10).map((s, i) => ({ at: s.at + (i > 7 ? 300 : 0) }));
    expect(isScan(slowOnce)).toBe(true);
    expect(isScan(paused)).toBe(false);
  });
});
