import { dogsIn, type Histogram } from './histogram.js';
import { wilson } from './wilson.js';

export interface CurvePoint { value: number; share: number; lower: number; upper: number }

/**
 * The share of dogs at or below each value that some dog has, with its 95 % interval by Wilson's method. The band
 * holds point by point; that the whole curve lies within it is less sure.
 */
export function cumulative(group: Histogram): CurvePoint[] {
  const { scale, counts } = group;
  const n = dogsIn(group);
  let seen = 0;
  return counts.flatMap((count, i) => {
    if (count === 0) return [];
    seen += count;
    return [{ value: Number((scale.min + i / 10 ** scale.decimals).toFixed(scale.decimals)), share: seen / n, ...wilson(seen, n) }];
  });
}
