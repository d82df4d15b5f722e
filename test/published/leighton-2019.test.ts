import { normalQuantile } from '#libs/science/distributions';
import { intensity } from '#libs/science/selection/intensity';
import { correlatedResponse } from '#libs/science/selection/response';

// Leighton et al. PLoS ONE 2019;14:e0212544, abstract: share with the best extended-view grade in the first generation and
// after 8 generations; heritabilities of index and extended score, genetic correlation. Shifts and parts recomputed.
describe.each([
  ['German Shepherd Dogs', 0.34, 0.93, 1.888254, 0.236032, 0.76, 0.6, -0.28, 0.31513],
  ['Labradors', 0.55, 0.94, 1.429112, 0.178639, 0.72, 0.66, -0.21, 0.219338],
  ['Golden Retrievers', 0.43, 0.87, 1.302765, 0.162846, 0.41, 0.59, -0.29, 0.241749],
])('%s', (_breed, before, after, shift, perGeneration, ofScore, ofIndex, genetic, part) => {
  it('the underlying liability moved by so many standard deviations', () => {
    const moved = normalQuantile(after) - normalQuantile(before);
    expect(moved).toBeCloseTo(shift, 6);
    expect(moved / 8).toBeCloseTo(perGeneration, 6);
  });

  it('the move asks for less than choosing half of both sexes would give', () => {
    expect(perGeneration / ofScore).toBeGreaterThan(0);
    expect(perGeneration / ofScore).toBeLessThan(intensity(0.5).i);
  });

  it('choosing by the score moves laxity by about a quarter of direct choosing', () => {
    expect(-correlatedResponse(ofScore, ofIndex, genetic)).toBeCloseTo(part, 6);
  });
});

// Leighton, J Am Vet Med Assoc 1997;210:1474-1479: from 55 to 24 % of German Shepherd Dogs, from 30 to 10 % of Labradors with changes.
it.each([[0.55, 0.24, 0.831964], [0.3, 0.1, 0.757151]])('from %f to %f with changes: a shift of %f', (before, after, shift) => {
  expect(normalQuantile(before) - normalQuantile(after)).toBeCloseTo(shift, 6);
});
