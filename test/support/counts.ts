import type { Tx } from '#libs/platform/database/db';
import type { StepDeps } from '#libs/steps/record/step-deps';
import { rebuildStatistics } from '#libs/steps/statistics/rebuild-statistics';
import type { RunningServer } from './running-server.js';

/** What statistics hold: each dog's one reading, and how many dogs of a breed have a value. */
export const counts = (server: RunningServer) => server.look(async (tx) => ({
  dogs: await tx.countingRow.findMany({ orderBy: [{ dogId: 'asc' }, { protocol: 'asc' }] }),
  cells: await tx.countingCell.findMany({ orderBy: [{ pool: 'asc' }, { breed: 'asc' }, { ageBand: 'asc' }, { bornYear: 'asc' }, { sender: 'asc' }, { measure: 'asc' }, { value: 'asc' }] }),
}));

/** The same, counted anew from the facts. */
export async function countedAnew(server: RunningServer): ReturnType<typeof counts> {
  const db = { system: <T>(_reason: string, work: (tx: Tx) => Promise<T>) => server.look(work) };
  await rebuildStatistics({ db, clock: server.clock, publicUrl: server.url } as unknown as StepDeps);
  return counts(server);
}
