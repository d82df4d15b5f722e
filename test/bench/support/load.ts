import autocannon from 'autocannon';

const SECONDS = 3;
const WARM_UP_SECONDS = 2;

async function load(url: string, headers: Record<string, string>, duration: number): Promise<number> {
  // In a thread of its own: asking must not take from the time for answering.
  const { requests, non2xx, errors } = await autocannon({ url, headers, connections: 20, duration, workers: 1 });
  if (non2xx + errors > 0) throw new Error(`${url}: ${non2xx} answers were no success and ${errors} requests failed.`);
  return requests.average;
}

/** Requests a second with 20 connections, ours and the bare way in turns; the middle of the ratios. */
export async function requestsPerSecond(ours: string, bare: string, headers: Record<string, string>, rounds = 5): Promise<{ ours: number; bare: number; ratio: number }> {
  for (const url of [ours, bare]) await load(url, headers, WARM_UP_SECONDS);
  const figures: { ours: number; bare: number }[] = [];
  for (let i = 0; i < rounds; i++) figures.push({ ours: await load(ours, headers, SECONDS), bare: await load(bare, headers, SECONDS) });
  return { ours: median(figures.map((f) => f.ours)), bare: median(figures.map((f) => f.bare)), ratio: median(figures.map((f) => f.ours / f.bare)) };
}

/** Times one way and the other in turns, so that neither has the quieter machine; answers both in turns per second. */
export async function inTurns(ours: () => Promise<unknown>, bare: () => Promise<unknown>, { rounds = 5, each = 20 } = {}): Promise<{ ours: number; bare: number }> {
  const time = async (work: () => Promise<unknown>): Promise<number> => {
    const start = performance.now();
    for (let i = 0; i < each; i++) await work();
    return (each * 1000) / (performance.now() - start);
  };
  await time(ours);
  await time(bare);
  const figures: { ours: number; bare: number }[] = [];
  for (let i = 0; i < rounds; i++) figures.push({ ours: await time(ours), bare: await time(bare) });
  return { ours: median(figures.map((f) => f.ours)), bare: median(figures.map((f) => f.bare)) };
}

export const median = (numbers: number[]): number => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!;
