import { ageBandOn } from '#libs/science/population/age-band';
import { checkReading } from '#libs/science/protocols/check-reading';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { earlierDogs, herds } from './earlier-dogs.js';

const dogs = earlierDogs(2026);

it('are the same at every start, one name each, and say that they are invented', () => {
  expect(earlierDogs(2026)).toEqual(dogs);
  expect(new Set(dogs.map((d) => d.call)).size).toBe(dogs.length);
  expect(dogs.every((d) => d.call.startsWith('Invented'))).toBe(true);
});

it('were read before the year began, at one age', () => {
  for (const dog of dogs) {
    expect(dog.imaged < '2025-12-15').toBe(true);
    expect(ageBandOn(dog.born, dog.imaged)).toBe('months12to23');
  }
});

it('have readings that the protocol takes', () => {
  for (const { left, right } of dogs) expect(checkReading(findProtocol('hipLaxity', '2')!, [{ joint: 'left', value: left }, { joint: 'right', value: right }]).filter((p) => p.weight === 'refuse')).toEqual([]);
});

it('make one full picture, one with a warning and one too small', () => {
  expect(herds.map((h) => h.read >= 120)).toEqual([true, false, false]);
  expect(herds.map((h) => h.read >= 20)).toEqual([true, true, false]);
});
