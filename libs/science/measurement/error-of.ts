/**
 * Standard error of f(x) to first order, √(gᵀCg) with the slope g by central differences.
 * Holds where f is nearly straight over a few standard errors.
 * @param f of a list of numbers; must exist in a small neighbourhood of x
 * @param x where, in groups that vary together
 * @param covariances one square matrix per group, in the same order
 * @returns in the unit of f
 */
export function errorOf(f: (groups: number[][]) => number, x: readonly number[][], covariances: readonly number[][][]): number {
  let variance = 0;
  for (const [g, group] of x.entries()) {
    const slope = group.map((value, i) => {
      const step = 1e-6 * Math.max(1, Math.abs(value));
      const at = (moved: number) => f(x.map((other, k) => (k === g ? other.map((same, j) => (j === i ? moved : same)) : [...other])));
      return (at(value + step) - at(value - step)) / (2 * step);
    });
    const covariance = covariances[g]!;
    for (const [i, a] of slope.entries()) for (const [j, b] of slope.entries()) variance += a * b * covariance[i]![j]!;
  }
  return Math.sqrt(variance);
}

/** Of a point that is off by the same in every direction. */
export const pointCovariance = (error: number): number[][] => [[error ** 2, 0], [0, error ** 2]];
