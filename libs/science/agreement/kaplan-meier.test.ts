import fc from 'fast-check';
import { kaplanMeier, timeUntil } from './kaplan-meier.js';

const cases = fc.array(fc.record({ time: fc.integer({ min: 0, max: 60 }), closed: fc.boolean() }), { minLength: 1, maxLength: 80 });

it('falls from step to step, inside its interval', () => {
  fc.assert(fc.property(cases, (all) => {
    const { steps } = kaplanMeier(all);
    steps.forEach((step, i) => {
      expect(step.open).toBeLessThan(i === 0 ? 1 : steps[i - 1]!.open);
      if (step.mayBe) {
        expect(step.mayBe.lower).toBeLessThanOrEqual(step.open);
        expect(step.mayBe.upper).toBeGreaterThanOrEqual(step.open);
      }
    });
  }));
});

it('without open cases it is the share that is not yet closed', () => {
  fc.assert(fc.property(fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1 }), (times) => {
    for (const { time, open } of kaplanMeier(times.map((t) => ({ time: t, closed: true }))).steps) {
      expect(open).toBeCloseTo(times.filter((t) => t > time).length / times.length, 10);
    }
  }));
});

it('more open cases never make it look faster', () => {
  fc.assert(fc.property(cases, fc.integer({ min: 1, max: 20 }), (all, more) => {
    const before = timeUntil(kaplanMeier(all), 0.5).time ?? Infinity;
    const after = timeUntil(kaplanMeier([...all, ...Array.from({ length: more }, () => ({ time: 61, closed: false }))]), 0.5).time ?? Infinity;
    expect(after).toBeGreaterThanOrEqual(before);
  }));
});

it('with open cases only there is no step and no time', () => {
  const curve = kaplanMeier([{ time: 3, closed: false }, { time: 5, closed: false }]);
  expect(curve).toMatchObject({ n: 2, stillOpen: 2, steps: [], openAt: [3, 5] });
  expect(timeUntil(curve, 0.5)).toEqual({ time: null, lower: null, upper: null });
});

it('when all have closed at once there is no interval', () => {
  expect(kaplanMeier([{ time: 4, closed: true }, { time: 4, closed: true }]).steps).toEqual([{ time: 4, atRisk: 2, closed: 2, open: 0, standardError: 0, mayBe: null }]);
});

it.each([[-1], [NaN], [Infinity]])('a time of %f is refused', (time) => {
  expect(() => kaplanMeier([{ time, closed: true }])).toThrow('is not how long a case took');
});

it('no cases, and a share that is none, are refused', () => {
  expect(() => kaplanMeier([])).toThrow('There are no cases yet');
  expect(() => timeUntil(kaplanMeier([{ time: 1, closed: true }]), 1)).toThrow('1 is not a share of the cases');
});
