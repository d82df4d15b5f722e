import { allProtocols, findProtocol } from '../protocols/catalogue.js';
import { ageBandOn } from './age-band.js';
import { poolOf, readPool } from './pool.js';

it('puts versions together only where that is declared', () => {
  expect(poolOf(findProtocol('hipLaxity', '1')!)).toBe(poolOf(findProtocol('hipLaxity', '2')!));
  expect(poolOf(findProtocol('elbow', '1')!)).toBe(poolOf(findProtocol('elbow', '2')!));
  expect(poolOf({ code: 'hipLaxity', version: '3' })).toBe('hipLaxity@3');
  expect(poolOf(findProtocol('hipLoaded', '1')!)).not.toBe(poolOf(findProtocol('hipLaxity', '1')!));
});

it('keeps grades under different criteria apart', () => {
  const grade = (criteria: string) => poolOf(findProtocol('hipExtended', '1')!, [{ joint: 'left', value: 'B1', findings: { criteria } }]);
  expect(grade('1991')).not.toBe(grade('2022'));
  expect(readPool(grade('2022'))).toMatchObject({ protocol: { code: 'hipExtended' }, criteria: '2022' });
});

it('keeps the name of what was frozen before a comparable version came', () => {
  expect(poolOf(findProtocol('elbow', '2')!)).toBe('elbow@1');
  expect(readPool('elbow@1')?.protocol.version).toBe('2');
  expect(readPool('hipLaxity@1+2')?.protocol.version).toBe('2');
});

it('is read back for every shipped version', () => {
  for (const protocol of allProtocols()) expect(readPool(poolOf(protocol))?.protocol.code).toBe(protocol.code);
  expect(readPool('unheard@9')).toBeUndefined();
});

it.each([['2025-01-10', '2026-01-09', 'months4to11'], ['2025-01-10', '2026-01-10', 'months12to23'], ['2025-01-10', '2027-01-10', 'months24up']])('a dog born on %s and X-rayed on %s counts in %s', (birth, day, band) => {
  expect(ageBandOn(birth, day)).toBe(band);
});
