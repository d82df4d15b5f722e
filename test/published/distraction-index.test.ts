import { distractionIndex } from '#libs/science/measurement/distraction-index';
import { pictureScale } from '#libs/science/measurement/picture-scale';

// Definition: displacement of the head divided by its radius (Vet Comp Orthop Traumatol 2020, introduction). Values recomputed from it; nowhere printed.
const circle = (x: number, y: number, radius: number, centreError = 0, radiusError = 0) => ({ centre: { x, y }, radius, covariance: [[centreError ** 2, 0, 0], [0, centreError ** 2, 0], [0, 0, radiusError ** 2]] });
const index = (shift: number, error = 0, radiusError = 0) => distractionIndex(circle(250 + shift, 310, 30, error, radiusError), circle(250, 310, 30, error));

it('socket at 250, 310, head at 262, 301, radius 30: distance 15, index 0.5; the same at 1.15 times the size', () => {
  const at = (k: number) => distractionIndex(circle(262 * k, 301 * k, 30 * k), circle(250 * k, 310 * k, 33 * k));
  expect(at(1).distance).toBeCloseTo(15, 12);
  expect(at(1).value).toBeCloseTo(0.5, 12);
  expect(at(1.15).value).toBeCloseTo(0.5, 12);
});

it('the same with rows 0.2 mm and columns 0.1 mm apart and a radius of 3 mm: 0.721110', () => {
  const { scale } = pictureScale({ width: 600, height: 600, spacing: { row: 0.2, column: 0.1 } });
  const [head, socket] = [scale({ x: 262, y: 301 }), scale({ x: 250, y: 310 })];
  expect(distractionIndex(circle(head.x, head.y, 3), circle(socket.x, socket.y, 3)).value).toBeCloseTo(0.72111, 6);
});

it('error 0.5 px in each coordinate and in the radius, distance 15, radius 30: standard error 0.0250000', () => {
  expect(index(15, 0.5, 0.5).standardError).toBeCloseTo(0.025, 7);
});

// Rice distribution, error 0.5 px in each coordinate, radius 30 exact: recomputed in two ways.
describe('near 0, where a distance cannot be negative', () => {
  it('a hip with no distance reads 0.0295409 on average (sd 0.0154417), and 95 of 100 readings lie below 0.0576939', () => {
    const { ofNoDistance, standardError } = index(0, 0.5);
    expect(standardError).toBeCloseTo(0.0235702, 7);
    expect(ofNoDistance.mean).toBeCloseTo(0.0295409, 7);
    expect(ofNoDistance.standardDeviation).toBeCloseTo(0.0154417, 7);
    expect(ofNoDistance.below95).toBeCloseTo(0.0576939, 7);
  });

  it.each([[0, 0.0295409], [0.1, 0.10282], [0.2, 0.201394], [0.3, 0.300927], [0.5, 0.500556]])('a true %f reads %f on average', (truth, mean) => {
    expect(meanReading(truth, Math.hypot(0.5, 0.5))).toBeCloseTo(mean, 6);
  });

  it('a reading below 0.058 cannot be told from 0, one above it can', () => {
    expect(index(30 * 0.0576, 0.5).from).toBe(0);
    expect(index(30 * 0.058, 0.5).from).toBeGreaterThan(0);
  });
});

/** Mean over all errors of the shift, by rings of equal width around the true place: smooth where a distance has its corner. */
function meanReading(truth: number, error: number): number {
  const [steps, turns, reach] = [400, 48, 8];
  let [sum, weights] = [0, 0];
  for (let i = 0; i < steps; i++) {
    const ring = ((i + 0.5) * reach) / steps;
    const weight = (ring * Math.exp(-(ring ** 2) / 2) * reach) / steps / turns;
    for (let k = 0; k < turns; k++) {
      const angle = (2 * Math.PI * (k + 0.5)) / turns;
      weights += weight;
      sum += weight * distractionIndex(circle(30 * truth + error * ring * Math.cos(angle), error * ring * Math.sin(angle), 30), circle(0, 0, 30)).value;
    }
  }
  return sum / weights;
}
