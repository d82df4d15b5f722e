import { hipLaxity } from '../protocols/hip-laxity.js';
import { histogramOf } from './histogram.js';
import { joinedInterval, placesOfTwenty, standing } from './standing.js';

const scale = { min: 0, max: 2, decimals: 2 };
const { repeatability } = hipLaxity.at(-1)!;
const many = (n: number) => Array.from({ length: n }, (_, i) => (i % 100) / 100);
const of = (n: number, value = 0.5) => standing(histogramOf(scale, many(n)), value, repeatability);

it('says nothing below 5 dogs, no place below 20, warns below 120', () => {
  expect(of(4)).toEqual({ kind: 'nothing' });
  expect(of(5)).toEqual({ kind: 'countOnly', n: 5 });
  expect(of(19)).toEqual({ kind: 'countOnly', n: 19 });
  expect(of(20)).toMatchObject({ kind: 'place', n: 20, warning: true });
  expect(of(119)).toMatchObject({ warning: true });
  expect(of(120)).toMatchObject({ warning: false });
});

it('gives no place where nobody has measured how far two examinations differ', () => {
  const answer = standing(histogramOf(scale, many(200)), 0.5, { known: false, reason: 'Nobody has.' });
  expect(answer).toEqual({ kind: 'notRepeated', n: 200, reason: 'Nobody has.' });
});

it('names the study that the reading error comes from', () => {
  expect(of(200)).toMatchObject({ citation: expect.stringContaining('1997;58:1076') });
});

it.each([
  [{ lower: 0, upper: 0.01 }, { from: 1, to: 1 }],
  [{ lower: 0.31, upper: 0.64 }, { from: 7, to: 13 }],
  [{ lower: 0.9999, upper: 1 }, { from: 20, to: 20 }],
  [{ lower: 1, upper: 1 }, { from: 20, to: 20 }],
  [{ lower: 0, upper: 0 }, { from: 1, to: 1 }],
  [{ lower: 0.5, upper: 0.5 }, { from: 11, to: 11 }],
])('%j of shares are the places %j of every twenty', (interval, places) => {
  expect(placesOfTwenty(interval)).toEqual(places);
});

it('a value that no dog in the group has, far out, still has a place that is not certain', () => {
  expect(joinedInterval(histogramOf(scale, many(100)), 2, 0.0367).lower).toBeLessThan(1);
});

it('refuses a value that is no number', () => {
  expect(() => of(200, NaN)).toThrow('NaN has no place among values');
});
