import { changeOfHalf } from '#libs/science/population/second-look-half';
import { secondLookOfShare } from '#libs/science/population/second-look-share';

// Sheppard, Phil Trans R Soc A 1899;192:101 for one half; recomputed by Plackett's integral, a conditional integral in R, and scipy.
it.each([
  [0.5, 0.94, 0.444588, 0.110825, 0.110825],
  [0.5, 0.85, 0.411699, 0.176602, 0.176602],
  [0.4, 0.94, 0.346355, 0.107289, 0.134112],
  [0.4, 0.85, 0.31456, 0.170879, 0.213599],
  [0.25, 0.94, 0.205964, 0.0880723, 0.176145],
  [0.25, 0.85, 0.180085, 0.13983, 0.279659],
])('share %f, correlation %f: inside twice %f, change %f, leave %f', (share, icc, bothInside, change, leave) => {
  expect(secondLookOfShare(share, icc)).toEqual({ bothInside: expect.closeTo(bothInside, 6), change: expect.closeTo(change, 6), leave: expect.closeTo(leave, 6) });
});

it.each([[0.94, 0.110825], [0.85, 0.176602]])('halves at correlation %f change for %f of the dogs', (icc, change) => {
  expect(changeOfHalf(icc)).toBeCloseTo(change, 6);
});

it.each([[0.94, 0.0787712], [0.85, 0.126592]])('against the true half it is the root of %f that counts: %f', (icc, change) => {
  expect(changeOfHalf(Math.sqrt(icc))).toBeCloseTo(change, 6);
});
