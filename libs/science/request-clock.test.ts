import { answerAtLatest, answerBy } from './request-clock.js';

// Days counted on a calendar by hand.
it.each([
  ['2026-11-25', '2026-12-25', '2027-02-25'],
  ['2027-01-31', '2027-02-28', '2027-04-30'],
  ['2028-01-31', '2028-02-29', '2028-04-30'],
])('a request of %s is answered by %s, and with an extension by %s', (received, by, latest) => {
  expect([answerBy(received), answerAtLatest(received)]).toEqual([by, latest]);
});

it('a day that is none is refused with a sentence', () => {
  expect(() => answerBy('2027-02-29')).toThrow('Write it as year-month-day');
});
