import { fixed } from '../format.js';
import type { Axis } from './Chart.js';

/** An axis that holds two values, with four to eight ticks at round numbers of at most so many decimals. */
export function niceTicks(from: number, to: number, decimals: number, label: string): Axis {
  const smallest = 10 ** -decimals;
  const rough = (to - from) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = Math.max(smallest, [1, 2, 5, 10].map((n) => n * power).find((n) => n >= rough)!);
  const first = Math.floor(from / step + 1e-9);
  const last = Math.ceil(to / step - 1e-9);
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toFixed(decimals)));
  return { from: ticks[0]!, to: ticks.at(-1)!, label, ticks: ticks.map((at) => ({ at, words: fixed(at, decimals) })) };
}

/** From 0 to a count, with ticks at whole numbers. */
export function countTicks(most: number): Omit<Axis, 'label'> {
  const power = 10 ** Math.floor(Math.log10(most / 5 || 1));
  const step = Math.max(1, [1, 2, 5, 10].map((n) => n * power).find((n) => n >= most / 6) ?? 1);
  return { from: 0, to: most, ticks: Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => ({ at: i * step, words: String(i * step) })) };
}

/** Shares as of 100. */
export const of100Ticks: Axis = { from: 0, to: 1, label: 'of 100', ticks: [0, 0.25, 0.5, 0.75, 1].map((at) => ({ at, words: String(100 * at) })) };
