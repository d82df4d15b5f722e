import { numbersFrom } from '#seed/phantoms/geometry';
import { distractionIndex } from './distraction-index.js';
import { fitCircle } from './fit-circle.js';
import type { Point } from './plane.js';

const ERROR = 1.2;
const R = 58;

/** Clicks of one person on the rims of a head and a socket with a known index, on the half that can be followed. */
function clicks(random: () => number, truth: number, n: number): { head: Point[]; socket: Point[] } {
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const arc = (x: number, y: number, r: number) => Array.from({ length: n }, (_, i) => ((95 + (170 * i) / (n - 1)) * Math.PI) / 180).map((a) => ({ x: x + r * Math.cos(a) + ERROR * normal(), y: y + r * Math.sin(a) + ERROR * normal() }));
  return { head: arc(700 + truth * R * 0.98, 500 + truth * R * 0.2, R), socket: arc(700, 500, 1.1 * R) };
}

describe('distractionIndex', () => {
  it.each([0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.8])('its interval holds a true %f in 95 of 100 simulated readings', (truth) => {
    const random = numbersFrom(1000 + Math.round(truth * 100));
    let held = 0;
    const runs = 800;
    for (let i = 0; i < runs; i++) {
      const { head, socket } = clicks(random, truth, 7);
      const { from, to } = distractionIndex(fitCircle(head, ERROR), fitCircle(socket, ERROR));
      if (from <= truth && truth <= to) held++;
    }
    // 800 runs: the binomial error of 95 % is 0.77 %.
    expect(held / runs).toBeGreaterThan(0.93);
  });

  it('without the care near 0 the plain interval would be short of a true 0 in most readings', () => {
    const random = numbersFrom(5);
    const runs = 500;
    let plain = 0;
    for (let i = 0; i < runs; i++) {
      const { head, socket } = clicks(random, 0, 7);
      const { value, standardError, nearZero } = distractionIndex(fitCircle(head, ERROR), fitCircle(socket, ERROR));
      expect(nearZero).toBe(true);
      if (value - standardError < 0) plain++;
    }
    expect(plain / runs).toBeLessThan(0.7);
  });

  it('is told with the larger error where the rims are seen on a shorter arc', () => {
    const arc = (r: number, span: number) => Array.from({ length: 6 }, (_, i) => ({ x: r * Math.cos((span * i) / 5), y: r * Math.sin((span * i) / 5) }));
    const error = (span: number) => distractionIndex(fitCircle(arc(R, span).map((p) => ({ x: p.x + 20, y: p.y })), ERROR), fitCircle(arc(64, span), ERROR)).standardError;
    expect(error(1.5)).toBeGreaterThan(2 * error(4));
  });

  it.each([
    ['a radius of 0', { radius: 0 }, 'INDEX_RADIUS'],
    ['a radius below 0', { radius: -3 }, 'INDEX_RADIUS'],
    ['a radius that is no number', { radius: NaN }, 'INDEX_NOT_FINITE'],
    ['a centre at infinity', { centre: { x: Infinity, y: 0 } }, 'INDEX_NOT_FINITE'],
    ['circles of two different hips', { centre: { x: 300, y: 0 } }, 'INDEX_IMPOSSIBLE'],
  ])('refuses %s', (_, changed, code) => {
    const none = [[0, 0, 0], [0, 0, 0], [0, 0, 0]];
    const circle = { centre: { x: 0, y: 0 }, radius: 30, covariance: none };
    expect(() => distractionIndex({ ...circle, ...changed }, circle)).toThrow(expect.objectContaining({ code }));
  });
});
