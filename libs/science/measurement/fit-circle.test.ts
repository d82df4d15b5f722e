import fc from 'fast-check';
import { numbersFrom } from '#seed/phantoms/geometry';
import { fitCircle } from './fit-circle.js';
import type { Point } from './plane.js';

const rim = (n: number, arc: number, from = 0, { x, y, r } = { x: 0, y: 0, r: 1 }): Point[] =>
  Array.from({ length: n }, (_, i) => from + (i * arc) / (arc === 360 ? n : n - 1)).map((degrees) => ({ x: x + r * Math.cos((degrees * Math.PI) / 180), y: y + r * Math.sin((degrees * Math.PI) / 180) }));

const points = fc.array(fc.record({ x: fc.integer({ min: -200, max: 200 }), y: fc.integer({ min: -200, max: 200 }) }), { minLength: 4, maxLength: 12 });
const turned = (p: Point, angle: number, k: number, mirror: boolean, dx: number, dy: number): Point => {
  const x = mirror ? -p.x : p.x;
  return { x: dx + k * (x * Math.cos(angle) - p.y * Math.sin(angle)), y: dy + k * (x * Math.sin(angle) + p.y * Math.cos(angle)) };
};

describe('fitCircle', () => {
  it('gives the exact circle for exact points on any arc of 60 to 300 degrees', () => {
    fc.assert(fc.property(fc.integer({ min: 3, max: 20 }), fc.double({ min: 60, max: 300, noNaN: true }), fc.double({ min: 0, max: 360, noNaN: true }), (n, arc, from) => {
      const fit = fitCircle(rim(n, arc, from, { x: 612, y: -340, r: 57.5 }));
      expect(fit.centre.x).toBeCloseTo(612, 7);
      expect(fit.centre.y).toBeCloseTo(-340, 7);
      expect(fit.radius).toBeCloseTo(57.5, 7);
      expect(fit.residual).toBeLessThan(1e-6);
    }));
  });

  it('goes through three points', () => {
    const three = [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }];
    const { centre, radius } = fitCircle(three);
    expect([centre.x, centre.y, radius].map((v) => Number(v.toFixed(10)))).toEqual([2, 1.5, 2.5]);
  });

  it('moves, turns, grows and mirrors with its points, its errors too', () => {
    const noisy = rim(8, 220, 30, { x: 3, y: 5, r: 60 }).map((p, i) => ({ x: p.x + [1.2, -0.4, 0.9, -1.1][i % 4]!, y: p.y + [0.3, -0.8, 1.4][i % 3]! }));
    const plain = fitCircle(noisy, 0.4);
    fc.assert(fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true }), fc.boolean(), fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: -5000, max: 5000 }), (angle, k, mirror, dx, dy) => {
      const fit = fitCircle(noisy.map((p) => turned(p, angle, k, mirror, dx, dy)), 0.4 * k);
      const centre = turned(plain.centre, angle, k, mirror, dx, dy);
      expect(Math.hypot(fit.centre.x - centre.x, fit.centre.y - centre.y)).toBeLessThan(1e-6 * k * plain.radius);
      expect(fit.radius / k).toBeCloseTo(plain.radius, 5);
      expect(fit.covariance[2]![2]! / k ** 2).toBeCloseTo(plain.covariance[2]![2]!, 5);
      expect(fit.arc).toBeCloseTo(plain.arc, 5);
    }));
  });

  it('is never worse than any circle near it', () => {
    fc.assert(fc.property(points, fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true }), (p, dx, dy, dr) => {
      const fit = fitted(p);
      fc.pre(fit !== undefined);
      const sum = (x: number, y: number, r: number) => p.reduce((s, q) => s + (Math.hypot(q.x - x, q.y - y) - r) ** 2, 0);
      expect(sum(fit.centre.x, fit.centre.y, fit.radius)).toBeLessThanOrEqual(sum(fit.centre.x + dx / 1e3, fit.centre.y + dy / 1e3, fit.radius + dr / 1e3) + 1e-6);
    }));
  });

  it('either gives finite numbers or one of its own errors, whatever the points', () => {
    fc.assert(fc.property(points, (p) => {
      const fit = fitted(p);
      if (fit) expect([fit.centre.x, fit.centre.y, fit.radius, fit.residual, fit.arc, ...fit.covariance.flat()].every(Number.isFinite)).toBe(true);
    }));
  });

  it('says how much of the rim the points span', () => {
    expect(fitCircle(rim(3, 360)).arc).toBeCloseTo(240, 6);
    expect(fitCircle(rim(5, 90)).arc).toBeCloseTo(90, 6);
    expect(fitCircle(rim(12, 360)).arc).toBeCloseTo(330, 6);
  });

  it('gives standard errors that simulated clicks confirm, and larger ones on shorter arcs', () => {
    const random = numbersFrom(41);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const error = 0.6;
    const spreadOf = (arc: number) => {
      const radii = Array.from({ length: 2000 }, () => fitCircle(rim(9, arc, 10, { x: 0, y: 0, r: 60 }).map((p) => ({ x: p.x + error * normal(), y: p.y + error * normal() }))).radius);
      const mean = radii.reduce((s, r) => s + r, 0) / radii.length;
      return Math.sqrt(radii.reduce((s, r) => s + (r - mean) ** 2, 0) / radii.length);
    };
    const told = (arc: number) => Math.sqrt(fitCircle(rim(9, arc, 10, { x: 0, y: 0, r: 60 }), error).covariance[2]![2]!);
    for (const arc of [360, 200, 130]) expect(spreadOf(arc) / told(arc)).toBeCloseTo(1, 1);
    expect(told(130)).toBeGreaterThan(told(360) * 2);
  });

  it.each<[string, Point[], string, RegExp]>([
    ['no points', [], 'CIRCLE_FEW_POINTS', /there are 0/],
    ['two points', [{ x: 1, y: 1 }, { x: 2, y: 2 }], 'CIRCLE_FEW_POINTS', /there are 2/],
    ['three points of which two are one', [{ x: 1, y: 1 }, { x: 2, y: 2 }, { x: 2, y: 2 }], 'CIRCLE_FEW_POINTS', /there are 2/],
    ['points on a line', [{ x: 1, y: 1 }, { x: 2, y: 2 }, { x: 5, y: 5 }], 'CIRCLE_COLLINEAR', /straight line/],
    ['a rim that is next to straight', [{ x: 0, y: 0 }, { x: 50, y: 0.5 }, { x: 100, y: 0 }], 'CIRCLE_RADIUS', /further round the rim/],
    ['a point that is no number', [{ x: 1, y: 1 }, { x: NaN, y: 2 }, { x: 5, y: 5 }], 'POINT_NOT_FINITE', /Point 2/],
    ['a point at infinity', [{ x: 1, y: 1 }, { x: 2, y: 2 }, { x: 5, y: -Infinity }], 'POINT_NOT_FINITE', /Point 3/],
  ])('refuses %s', (_, p, code, words) => {
    expect(() => fitCircle(p)).toThrow(expect.objectContaining({ code, message: expect.stringMatching(words) }));
  });
});

function fitted(p: Point[]) {
  try {
    return fitCircle(p);
  } catch (error) {
    expect(error).toMatchObject({ code: expect.stringMatching(/^CIRCLE_/) });
    return undefined;
  }
}
