import { inAList } from './in-a-list.js';

test('names that hold commas are told apart by semicolons', () => {
  expect(inAList(['Hips, laxity', 'Elbows'])).toBe('Hips, laxity; Elbows');
});

test('plain names are joined with commas', () => {
  expect(inAList(['Elbows', 'Hips'])).toBe('Elbows, Hips');
  expect(inAList(['Hips, laxity'])).toBe('Hips, laxity');
  expect(inAList([])).toBe('');
});
