/**
 * How often, of all pairs of a time of one kind and one of the other, the first is longer; a half where the two cannot
 * be told apart. The common-language effect size of Mann and Whitney’s U (1947; from memory).
 */
export function longerShare(one: readonly number[], other: readonly number[]): number {
  const wins = one.flatMap((a) => other.map((b): number => (a > b ? 1 : a === b ? 0.5 : 0)));
  return wins.reduce((sum, win) => sum + win, 0) / wins.length;
}

/** Asks for the two in turn, each first as often as second, so that a busy machine slows both alike; milliseconds. */
export async function timesInTurn(rounds: number, ask: readonly [() => Promise<unknown>, () => Promise<unknown>]): Promise<[number[], number[]]> {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round++) {
    for (const which of round % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const)) {
      const began = performance.now();
      await ask[which]();
      times[which].push(performance.now() - began);
    }
  }
  return times;
}
