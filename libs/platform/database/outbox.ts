import type { Tx } from './db.js';

/**
 * A job that is to run because of what this transaction writes. It is relayed to the queue after the
 * commit, so that neither can happen without the other.
 */
export async function addToOutbox(tx: Tx, job: string, payload: Record<string, string>, more: { dedupe?: string; notBefore?: Date } = {}): Promise<void> {
  await tx.$executeRaw`INSERT INTO outbox (job, payload, dedupe, not_before) VALUES (${job}, ${JSON.stringify(payload)}::jsonb, ${more.dedupe ?? null}, ${more.notBefore ?? null})`;
  await tx.$executeRaw`SELECT pg_notify('outbox', '')`;
}

export interface WaitingJob {
  id: bigint;
  job: string;
  payload: Record<string, string>;
  dedupe: string | null;
}

/**
 * Takes what is due, hands it on, and marks it relayed; two relays never take the same row. A row that can never be
 * handed on is given to `refused` and does not stand in the way of those behind it.
 */
export async function relayOutbox(tx: Tx, hand: (job: WaitingJob) => Promise<'handed' | 'refused'>, now: Date, most = 100): Promise<number> {
  const rows = await tx.$queryRaw<WaitingJob[]>`
    SELECT id, job, payload, dedupe FROM outbox WHERE relayed_at IS NULL AND (not_before IS NULL OR not_before <= ${now})
    ORDER BY id LIMIT ${most} FOR UPDATE SKIP LOCKED`;
  for (const row of rows) await hand(row);
  if (rows.length > 0) await tx.$executeRaw`UPDATE outbox SET relayed_at = now() WHERE id = ANY(${rows.map((r) => r.id)})`;
  return rows.length;
}
