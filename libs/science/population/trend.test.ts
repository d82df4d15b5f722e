import { trend } from './trend.js';

const at = (year: number, value: number, dogs = 20) => ({ year, value, dogs });

it('finds the line that the values lie on', () => {
  const found = trend([at(2020, 0.5), at(2021, 0.48), at(2022, 0.46), at(2023, 0.44)])!;
  expect(found.perYear).toBeCloseTo(-0.02, 12);
  expect(found.interval.upper - found.interval.lower).toBeCloseTo(0, 6);
  expect(found).toMatchObject({ from: 2020, to: 2023, n: 80 });
});

// By hand: years 0 to 3 with 20 dogs each, values .5±.1 in every year: slope 0, residual sum .8, spread 100; half = z·√(.8/78/100).
it('gives an interval that holds no change where there is none', () => {
  const found = trend([0, 1, 2, 3].flatMap((i) => [at(2020 + i, 0.4, 10), at(2020 + i, 0.6, 10)]))!;
  expect(found.perYear).toBeCloseTo(0, 12);
  expect(found.interval.upper).toBeCloseTo(1.959963984540054 * Math.sqrt(0.8 / 78 / 100), 12);
});

it('says nothing below four years or sixty dogs', () => {
  expect(trend([at(2020, 0.5, 40), at(2021, 0.4, 40), at(2022, 0.3, 40)])).toBeNull();
  expect(trend([at(2020, 0.5, 14), at(2021, 0.4, 15), at(2022, 0.3, 15), at(2023, 0.3, 15)])).toBeNull();
});
