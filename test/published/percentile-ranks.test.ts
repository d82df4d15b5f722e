import { histogramOf, midRank, rankOf } from '#libs/science/population/histogram';

const ranks = (group: ReturnType<typeof histogramOf>, x: number) => {
  const { below, equal, n } = rankOf(group, x);
  return [(100 * below) / n, (100 * (below + equal)) / n, 100 * midRank(group, x)];
};

// The example of scipy's documentation (from memory), recomputed.
it('3 among 1, 2, 3, 3, 4: 40 below, 80 up to it, 60 with ties counted half', () => {
  expect(ranks(histogramOf({ min: 0, max: 5, decimals: 0 }, [1, 2, 3, 3, 4]), 3)).toEqual([40, 80, 60]);
});

// Invented indices, recomputed with R.
describe('17 invented indices', () => {
  const group = histogramOf({ min: 0, max: 2, decimals: 2 }, [0.21, 0.28, 0.33, 0.33, 0.37, 0.41, 0.41, 0.41, 0.46, 0.49, 0.52, 0.55, 0.58, 0.63, 0.7, 0.77, 0.85]);

  it.each([
    [0.33, [11.7647, 23.5294, 17.6471]],
    [0.41, [29.4118, 47.0588, 38.2353]],
  ])('%f', (x, expected) => {
    expect(ranks(group, x)).toEqual(expected.map((rank) => expect.closeTo(rank, 4)));
  });

  it('mid-ranks of the middle and of the tightest', () => {
    expect(100 * midRank(group, 0.46)).toBe(50);
    expect(100 * midRank(group, 0.21)).toBeCloseTo(2.94118, 5);
  });

  it('a sum that is 0.41 only on paper is tied with 0.41', () => {
    expect(0.33 + 0.08).not.toBe(0.41);
    expect(rankOf(group, 0.33 + 0.08)).toEqual(rankOf(group, 0.41));
  });
});
