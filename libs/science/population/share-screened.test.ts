import { shareScreened } from './share-screened.js';

const births = new Map([[2019, 180], [2020, 83], [2022, 20], [2023, 0]]);

// Newcombe, Stat Med 1998;17:857-872, Table I, method 3: 81 of 263 is 0.2553 to 0.3662.
it('is those in the set of all that were born in its years, with the score interval', () => {
  const found = shareScreened({ from: 2019, to: 2020, n: 81 }, births);
  expect(found).toMatchObject({ kind: 'known', born: 263, share: 81 / 263 });
  if (found.kind !== 'known') throw new Error('known');
  expect(found.interval.lower).toBeCloseTo(0.2553, 4);
  expect(found.interval.upper).toBeCloseTo(0.3662, 4);
});

it('is not known as long as the births of one of its years are not', () => {
  expect(shareScreened({ from: 2020, to: 2022, n: 30 }, births)).toEqual({ kind: 'notKnown', years: [2021] });
  expect(shareScreened({ from: 2024, to: 2024, n: 30 }, new Map())).toEqual({ kind: 'notKnown', years: [2024] });
});

it('is no share where more are in the set than were born', () => {
  expect(shareScreened({ from: 2022, to: 2022, n: 21 }, births)).toEqual({ kind: 'moreThanBorn', born: 20 });
  expect(shareScreened({ from: 2023, to: 2023, n: 20 }, births)).toEqual({ kind: 'moreThanBorn', born: 0 });
});

it('reaches to all where all were', () => expect(shareScreened({ from: 2022, to: 2022, n: 20 }, births)).toMatchObject({ kind: 'known', share: 1, interval: { upper: 1 } }));
