import fc from 'fast-check';
import { exactLimits, funnel, pChart } from './control-limits.js';

const units = fc.array(fc.integer({ min: 1, max: 300 }).chain((of) => fc.record({ of: fc.constant(of), cases: fc.integer({ min: 0, max: of }) })), { minLength: 1, maxLength: 20 });

it('limits stay in 0 to 1 around all together, and a unit at the centre is within them', () => {
  fc.assert(fc.property(units, (all) => {
    const { centre, points } = funnel(all, 0.95);
    for (const { limits, beyond, share } of points) {
      expect(limits.lower).toBeGreaterThanOrEqual(0);
      expect(limits.upper).toBeLessThanOrEqual(1);
      if (share === centre) expect(beyond).toBeNull();
    }
  }));
});

it('the same share turned round lies beyond on the other side', () => {
  fc.assert(fc.property(units, (all) => {
    const turned = { above: 'below', below: 'above' } as const;
    const other = pChart(all.map(({ cases, of }) => ({ cases: of - cases, of }))).points;
    pChart(all).points.forEach(({ beyond }, i) => expect(other[i]!.beyond).toBe(beyond && turned[beyond]));
  }));
});

it('a small unit gets exact limits: with 3 of which none is expected often, none is no sign', () => {
  const { points } = funnel([{ cases: 10, of: 100 }, { cases: 0, of: 3 }], 0.95);
  expect(points[1]!.beyond).toBeNull();
  expect(points[1]!.limits.upper).toBe(exactLimits(10 / 103, 3, 1.959963984540054).upper);
});

it('where nothing ever happened nobody is beyond', () => {
  expect(pChart([{ cases: 0, of: 10 }, { cases: 0, of: 20 }]).points.map(({ beyond }) => beyond)).toEqual([null, null]);
});

it.each([[{ cases: 2, of: 1 }], [{ cases: -1, of: 5 }], [{ cases: 0, of: 0 }], [{ cases: NaN, of: 5 }], [{ cases: 0.5, of: 5 }]])('%j is refused', (unit) => {
  expect(() => pChart([unit])).toThrow('is not a share');
});

it('no units are refused', () => {
  expect(() => funnel([], 0.95)).toThrow('no units to compare');
});
