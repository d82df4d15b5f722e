import { intensity } from '#libs/science/selection/intensity';
import { type Variances, varianceAfterChoosing } from '#libs/science/selection/variance-after-choosing';

// Bulmer, Am Nat 1971;105:201-211 (from memory); a fifth of both sexes, variances 50 and 50, recomputed in two ways.
const k = { dogs: intensity(0.2).k, bitches: intensity(0.2).k };
const next = (now: Variances) => varianceAfterChoosing(now, 50, k);

it('the next generation has a genetic variance of 40.23303', () => {
  const { genetic } = next({ genetic: 50, environment: 50 });
  expect(genetic).toBeCloseTo(40.23303, 5);
  expect(2 * genetic - 50).toBeCloseTo(30.46606, 5); // among the parents
});

it('it settles at 37.46230, a heritability of .428325', () => {
  let now: Variances = { genetic: 50, environment: 50 };
  for (let i = 0; i < 60; i++) now = next(now);
  expect(now.genetic).toBeCloseTo(37.4623, 5);
  expect(now.genetic / (now.genetic + now.environment)).toBeCloseTo(0.428325, 6);
});
