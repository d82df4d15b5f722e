import { intraclass } from '#libs/science/agreement/intraclass';
import { meanSquares } from '#libs/science/agreement/mean-squares';

// Shrout & Fleiss, Psychol Bull 1979;86:420-428: 6 targets, 4 judges. All six are printed there to two decimals; six digits and intervals recomputed with R.
const ratings = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]];

it('mean squares 11.2417, 6.26389, 32.4861, 1.01944', () => {
  expect(meanSquares(ratings)).toMatchObject({ between: expect.closeTo(11.2417, 4), within: expect.closeTo(6.26389, 5), ofReaders: expect.closeTo(32.4861, 4), error: expect.closeTo(1.01944, 5) });
});

it.each([
  ['oneWay', 'single', 0.165742, -0.132932, 0.72256],
  ['agreement', 'single', 0.289764, 0.0187865, 0.761084],
  ['consistency', 'single', 0.714841, 0.342465, 0.945858],
  ['oneWay', 'mean', 0.442797, -0.884442, 0.912415],
  ['agreement', 'mean', 0.620051, 0.0711368, 0.927232],
  ['consistency', 'mean', 0.909316, 0.675675, 0.985892],
] as const)('%s, %s: %f (%f to %f)', (kind, of, value, lower, upper) => {
  expect(intraclass(ratings)![kind][of]).toEqual({ value: expect.closeTo(value, 6), mayBe: { lower: expect.closeTo(lower, 6), upper: expect.closeTo(upper, 6) } });
});
