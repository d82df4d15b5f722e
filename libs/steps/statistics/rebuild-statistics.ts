import type { Tx } from '#libs/platform/database/db';
import { queueActor } from '../record/actor.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';
import { noteStudies } from './note-studies.js';

const AT_ONCE = 20;

/** What was not as the facts say: what a study counts for, a dog's one reading, or a cell of a histogram. */
export interface Differed { what: 'study' | 'dog' | 'cell'; breed: string; pool: string; ageBand: string; n: number }

export interface Rebuilt { orders: number; differed: Differed[] }

/**
 * Counts everything anew from the facts: what each order says, then the dogs' rows and the histograms. Orders are
 * locked a few at a time, so that the practices go on working meanwhile; each is compared under its lock, so that
 * what they change is no difference.
 */
export async function rebuildStatistics(deps: StepDeps): Promise<Rebuilt> {
  const orders = await deps.db.system('count anew', (tx) => tx.$queryRaw<{ id: string }[]>`
    SELECT o.id FROM orders o WHERE EXISTS (SELECT 1 FROM fact f WHERE f.order_id = o.id AND f.type IN ('exposureTaken', 'exposureAssigned', 'resultAccepted')) ORDER BY o.id`);
  const differed: Differed[] = [];
  for (let i = 0; i < orders.length; i += AT_ONCE) {
    const ids = orders.slice(i, i + AT_ONCE).map(({ id }) => id);
    differed.push(...(await deps.db.system('count anew', (tx) => noteAnew(deps, tx, ids))));
  }
  differed.push(...(await deps.db.system('count anew', countAnew)));
  return { orders: orders.length, differed: added(differed) };
}

interface Noted extends Omit<Differed, 'what' | 'n'> { said: string }

async function noteAnew(deps: StepDeps, tx: Tx, ids: string[]): Promise<Differed[]> {
  const orders = [];
  for (const id of ids) orders.push((await lockOrder(tx, id))!);
  const notes = () => tx.$queryRaw<Noted[]>`SELECT s.breed, s.pool, s.age_band AS "ageBand", s::text AS said FROM statistics_study s WHERE order_id = ANY(${ids}::uuid[])`;
  const was = new Set((await notes()).map(({ said }) => said));
  for (const order of orders) {
    const work = workOn(tx, deps.clock.now(), queueActor(order.practice), order, deps.publicUrl);
    await noteStudies(work, work.evaluation);
  }
  return (await notes()).filter(({ said }) => !was.has(said)).map(({ breed, pool, ageBand }) => ({ what: 'study', breed, pool, ageBand, n: 1 }));
}

/** A dog or a cell that was wrong is told once, by what it is now, or by what it was where it is no more. */
async function countAnew(tx: Tx): Promise<Differed[]> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended('counting', 0))`;
  await tx.$executeRaw`CREATE TEMP TABLE was_row ON COMMIT DROP AS SELECT * FROM counting_row`;
  await tx.$executeRaw`CREATE TEMP TABLE was_cell ON COMMIT DROP AS SELECT * FROM counting_cell`;
  await tx.$executeRaw`SELECT app.rebuild_counts()`;
  return tx.$queryRaw<Differed[]>`
    WITH dogs AS (
      SELECT DISTINCT ON (dog_id, protocol) breed, pool, age_band FROM (
        (SELECT 0 AS before, * FROM (SELECT * FROM counting_row EXCEPT SELECT * FROM was_row) now) UNION ALL (SELECT 1, * FROM (SELECT * FROM was_row EXCEPT SELECT * FROM counting_row) was)) r ORDER BY dog_id, protocol, before
    ), cells AS (
      SELECT DISTINCT scheme_id, pool, breed, age_band, born_year, sender, measure, value FROM (
        (SELECT * FROM counting_cell EXCEPT SELECT * FROM was_cell) UNION ALL (SELECT * FROM was_cell EXCEPT SELECT * FROM counting_cell)) c
    )
    SELECT 'dog' AS what, breed, pool, age_band AS "ageBand", count(*)::int AS n FROM dogs GROUP BY 2, 3, 4
    UNION ALL SELECT 'cell', breed, pool, age_band, count(*)::int FROM cells GROUP BY 2, 3, 4`;
}

/** One line for each kind and group. */
function added(all: Differed[]): Differed[] {
  const lines = new Map<string, Differed>();
  for (const one of all) {
    const key = [one.what, one.breed, one.pool, one.ageBand].join('\n');
    lines.set(key, { ...one, n: (lines.get(key)?.n ?? 0) + one.n });
  }
  return [...lines.values()];
}
