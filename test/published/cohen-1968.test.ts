import { kappa } from '#libs/science/agreement/kappa';

// The table of Cohen 1960 and 1968 (Psychol Bull 1968;70:213-220), as given in the help of R's psych package.
const table = [[88, 14, 18], [10, 40, 10], [2, 6, 12]];

// Kappa printed as .492; standard errors by Fleiss, Cohen & Everitt, Psychol Bull 1969;72:323-327, recomputed by hand and with R's vcd.
it.each([
  ['none', 0.491525, 0.0510018],
  ['linear', 0.473684, 0.0544323],
  ['quadratic', 0.454545, 0.0664537],
] as const)('weights %s: %f, standard error %f', (weights, value, standardError) => {
  expect(kappa(table, weights)).toMatchObject({ n: 200, kappa: expect.closeTo(value, 6), standardError: expect.closeTo(standardError, 7) });
});

it('found and expected agreement: .70 and .41', () => {
  expect(kappa(table)).toMatchObject({ observed: expect.closeTo(0.7, 12), expected: expect.closeTo(0.41, 12) });
});

// Own weights; printed as .348 and .353 in the same help page.
it('the weights of 1968 give .347826, standard error .0755040; unequal ones on both sides .353383', () => {
  expect(kappa(table, [[0, 1, 3], [1, 0, 6], [3, 6, 0]])).toMatchObject({ kappa: expect.closeTo(0.347826, 6), standardError: expect.closeTo(0.075504, 7) });
  expect(kappa(table, [[0, 1, 4], [1, 0, 6], [2, 2, 0]]).kappa).toBeCloseTo(0.353383, 6);
});

// Recomputed, nowhere printed.
it('20 5 / 10 15: found .70, expected .50, kappa .4', () => {
  expect(kappa([[20, 5], [10, 15]])).toMatchObject({ n: 50, observed: expect.closeTo(0.7, 12), expected: expect.closeTo(0.5, 12), kappa: expect.closeTo(0.4, 12) });
});
