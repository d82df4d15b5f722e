import type { Histogram } from './histogram.js';
import { quantile } from './quantile.js';
import { quantileInterval } from './quantile-interval.js';
import type { Interval } from './wilson.js';

/** A part of a set, told by its size and its middle alone: two of them that follow one another tell no dog's value. */
export interface PartFigure { n: number; median: number; interval: Interval | null }

export const partFigure = (group: Histogram, n: number): PartFigure => ({ n, median: Number(quantile(group, 0.5).value.toFixed(group.scale.decimals + 1)), interval: quantileInterval(group, 0.5) });
