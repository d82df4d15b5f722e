import { ageBandWords, type AgeBand } from '#libs/science/population/age-band';
import type { Differed, Rebuilt } from './rebuild-statistics.js';

const WHAT: Record<Differed['what'], [one: string, many: string]> = {
  study: ['study was noted otherwise than its facts say', 'studies were noted otherwise than their facts say'],
  dog: ['dog was counted otherwise', 'dogs were counted otherwise'],
  cell: ['count of a value was another', 'counts of values were others'],
};

/** For whoever runs the server: what was not as the facts say, and that it is now. */
export function rebuiltWords({ orders, differed }: Rebuilt): string[] {
  const counted = `Counted anew from the facts of ${orders} ${orders === 1 ? 'order' : 'orders'} with films or results.`;
  if (differed.length === 0) return [counted, 'Nothing differed.'];
  return [counted, ...differed.map(({ what, n, breed, pool, ageBand }) => `${breed}, ${pool}, ${ageBandWords[ageBand as AgeBand] ?? ageBand}: ${n} ${WHAT[what][n === 1 ? 0 : 1]}.`), 'All of it is now as the facts say. Frozen sets stay as they were frozen; the next freeze goes by these counts.'];
}
