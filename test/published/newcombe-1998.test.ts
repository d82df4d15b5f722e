import { wilson, wilsonOfShare } from '#libs/science/population/wilson';

// Newcombe, Stat Med 1998;17:857-872, Table I, method 3: printed to four decimals, six digits recomputed with a second program.
it.each([
  [81, 263, 0.255289, 0.36621],
  [15, 148, 0.0623864, 0.160487],
  [0, 20, 0, 0.161125],
])('%i of %i: %f to %f', (k, n, lower, upper) => {
  expect(wilson(k, n).lower).toBeCloseTo(lower, 6);
  expect(wilson(k, n).upper).toBeCloseTo(upper, 6);
});

// Published counts; the intervals recomputed, nowhere printed.
it.each([
  ['gas in the joint, LaFond et al. J Am Vet Med Assoc 1997;210:1294-1297', 279, 6_649, 0.0374005, 0.0470509],
  ['deaths within 48 h, Brodbelt et al. Vet Anaesth Analg 2008;35:365-373', 163, 98_036, 0.00142641, 0.00193795],
  ['arthrosis at 8 years, fed freely, Kealy et al. J Am Vet Med Assoc 2000;217:1678-1680', 15, 22, 0.473186, 0.836394],
  ['the same, fed less', 3, 21, 0.0498101, 0.346361],
])('%s: %i of %i', (_what, k, n, lower, upper) => {
  expect(wilson(k, n).lower).toBeCloseTo(lower, 6);
  expect(wilson(k, n).upper).toBeCloseTo(upper, 6);
});

// Shares with the best extended-view grade in the first generation, printed as whole per cent: Leighton et al. PLoS ONE 2019;14:e0212544.
it.each([
  ['German Shepherd Dogs', 0.34, 273, 0.286375, 0.398066],
  ['Labradors', 0.55, 323, 0.495475, 0.60335],
  ['Golden Retrievers', 0.43, 51, 0.303783, 0.566023],
])('%s: %f of %i', (_breed, share, n, lower, upper) => {
  expect(wilsonOfShare(share, n).lower).toBeCloseTo(lower, 6);
  expect(wilsonOfShare(share, n).upper).toBeCloseTo(upper, 6);
});
