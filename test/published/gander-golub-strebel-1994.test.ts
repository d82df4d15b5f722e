import { fitCircle } from '#libs/science/measurement/fit-circle';
import { taubinCircle } from '#libs/science/measurement/taubin-circle';

// Gander, Golub, Strebel, BIT 1994;34:558-578: the six points of their example.
const points = [[1, 7], [2, 6], [5, 8], [7, 7], [9, 5], [3, 7]].map(([x, y]) => ({ x: x!, y: y! }));
const n = points.length;
const mean = { x: points.reduce((sum, p) => sum + p.x, 0) / n, y: points.reduce((sum, p) => sum + p.y, 0) / n };

const within = (value: number, expected: number) => expect(Math.abs(value / expected - 1)).toBeLessThan(1e-5 / 10);

it('geometric fit: centre 4.739782, 2.983533, radius 4.714226, sum of squares 1.227599', () => {
  // Printed 4.7398, 2.9835, 4.7142 (from memory); six digits recomputed, the same with the CRAN package conicfit.
  const { centre, radius, residual } = fitCircle(points);
  within(centre.x, 4.739782);
  within(centre.y, 2.983533);
  within(radius, 4.714226);
  within(residual ** 2 * n, 1.227599);
});

it('Taubin’s fit: centre 4.613933, 2.795209, radius 4.879213', () => {
  // Recomputed, the same with the CRAN package conicfit. Method: Taubin, IEEE PAMI 1991;13:1115-1138.
  const { centre, radius } = taubinCircle(points.map((p) => ({ x: p.x - mean.x, y: p.y - mean.y })));
  within(centre.x + mean.x, 4.613933);
  within(centre.y + mean.y, 2.795209);
  within(radius, 4.879213);
});
