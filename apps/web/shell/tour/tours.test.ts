import { tourOf } from './tours.js';

const of = (kind: string, ...roles: string[]) => tourOf({ kind, roles } as never);

it.each([['staff', 'desk'], ['staff', 'nurse'], ['staff', 'vet'], ['staff', 'radiographer'], ['staff', 'manager'], ['reader', 'reader'], ['lead', 'lead']])('a %s who is %s has a short tour', (kind, role) => {
  const { length } = of(kind, role);
  expect(length).toBeGreaterThanOrEqual(3);
  expect(length).toBeLessThanOrEqual(5);
});

it('who has several roles is told each thing once', () => {
  const stops = of('staff', 'desk', 'nurse', 'manager');
  expect(new Set(stops.map((s) => s.words)).size).toBe(stops.length);
  expect(stops.filter((s) => s.to === '/')).toHaveLength(1);
});
