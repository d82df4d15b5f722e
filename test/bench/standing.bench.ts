import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { hipLaxity } from '#libs/science/protocols/hip-laxity';
import { add, type Histogram, histogramOf } from '#libs/science/population/histogram';
import { standing } from '#libs/science/population/standing';
import type { BenchContext } from '../support/bench.js';
import { inTurns } from './support/load.js';

const scale = { min: 0, max: 2, decimals: 2 };
const { repeatability } = hipLaxity.at(-1)!;

/** Invented indices, spread like those of a breed. */
const indexOf = (i: number): number => Math.round(45 + 15 * Math.sin(i) + 10 * Math.sin(i * 7.3)) / 100;

/** A breed of so many results, counted as it is stored. */
function breed(results: number): Histogram {
  const once = histogramOf(scale, Array.from({ length: 1_000 }, (_, i) => indexOf(i)));
  return { scale: once.scale, counts: once.counts.map((count) => (count * results) / 1_000) };
}

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** What one breed takes, as the mean of many that are kept. */
function kilobytes(results: number): number {
  const many = 500;
  collect();
  const before = process.memoryUsage().heapUsed;
  const kept = Array.from({ length: many }, () => breed(results));
  collect();
  return (process.memoryUsage().heapUsed - before) / 1000 / kept.length;
}

/** Bare: every result kept and looked through for its rank. */
const bareRank = (values: Float64Array, x: number): number => values.reduce((below, value) => below + (value < x ? 1 : value === x ? 0.5 : 0), 0) / values.length;

export async function run({ row }: BenchContext): Promise<void> {
  const value = 0.44;
  const repeats = 1_000;
  const small = breed(1_000);
  for (const results of [1_000, 100_000, 10_000_000]) {
    const group = breed(results);
    const ask = (of: Histogram) => async () => {
      for (let i = 0; i < repeats; i++) standing(of, value, repeatability);
    };
    const { ours, bare } = await inTurns(ask(group), ask(small), { rounds: 9 });
    row(`standing of one dog among ${results.toLocaleString('en')} results`, 1_000_000 / (ours * repeats), 'µs', bare / ours);
    row(`a breed of ${results.toLocaleString('en')} results in memory`, kilobytes(results), 'kB');
  }
  const values = Float64Array.from({ length: 100_000 }, (_, i) => indexOf(i));
  const { ours, bare } = await inTurns(async () => { standing(breed100k, value, repeatability); }, async () => { bareRank(values, value); });
  row('standing among 100,000 results against looking through them', 1_000_000 / ours, 'µs', bare / ours);
  const counted = await inTurns(async () => { add(small, value); }, async () => { histogramOf(scale, [value]); });
  row('counting one more result', 1_000_000 / counted.ours, 'µs');
}

const breed100k = breed(100_000);
