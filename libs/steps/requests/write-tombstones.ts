import { keepTombstones } from '#libs/platform/backup/tombstones';
import type { WorkerDeps } from '../worker-deps.js';

/** Brings every tombstone to the file that a restore reads. */
export async function writeTombstones(deps: WorkerDeps): Promise<void> {
  if (!deps.tombstones) return;
  const rows = await deps.db.system('write tombstones', (tx) => tx.tombstone.findMany({ orderBy: { at: 'asc' } }));
  await keepTombstones(deps.tombstones, rows.map((r) => ({ person: r.personId, practice: r.practiceId, at: r.at.toISOString() })));
}
