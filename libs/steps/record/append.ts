import { randomUUID } from 'node:crypto';
import { evaluate } from '#libs/pathway/evaluate';
import type { Evaluation } from '#libs/pathway/evaluation';
import { factKinds } from '#libs/pathway/fact-kinds';
import type { Fact } from '#libs/pathway/facts';
import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import { noteStudies } from '../statistics/note-studies.js';
import { tellWebhooks } from '../webhooks/tell-webhooks.js';
import type { StoredFact } from './order-record.js';
import { storeProjection } from './projection.js';
import type { Stated, Work } from './work.js';

/**
 * Appends what was stated, reads the order anew and stores the answer for queries, all in the transaction
 * of the use case. The first fact carries the request's key, so that the same request twice is one.
 */
export async function append(work: Work, stated: Stated[], options: { key?: string; role?: Fact['role']; action: string; at?: string }): Promise<Evaluation> {
  const { tx, order, actor } = work;
  const now = recordedAt(work);
  const role = options.role ?? actor.roles[0]!;
  const facts = stated.map((s, i): StoredFact => {
    // What is decided is decided now; what was witnessed happened when the witness says.
    const at = factKinds[s.type].kind === 'decided' ? now : earlier(s.at ?? options.at, now);
    return { ...s, id: s.id ?? (i === 0 && options.key ? options.key : randomUUID()), at, rec: now, by: actor.id, byName: actor.name, role, practice: actor.practice } as StoredFact;
  });
  if (facts.length > 0) await insert(work, facts);
  await tellWebhooks(work, facts);
  order.facts.push(...facts);
  order.version += facts.length;
  const evaluation = evaluate(order.facts, now, order.rules);
  await storeProjection(work, evaluation);
  await noteStudies(work, evaluation);
  await audit(tx, { at: work.now, by: actor.id, role, action: options.action, practice: actor.practice, order: order.id, detail: { name: actor.name, facts: facts.map((f) => ({ id: f.id, type: f.type })) } });
  if (stated.some((s) => s.type === 'consentGiven' || s.type === 'consentWithdrawn')) await addToOutbox(tx, 'copy-consents', { order: order.id }, { dedupe: order.id, notBefore: new Date(work.now.getTime() + GATHER_MS) });
  work.evaluation = evaluation;
  return evaluation;
}

/** A signature answers several purposes one after the other; one paper tells them all. */
const GATHER_MS = 5000;

/** The order is locked: what is recorded later is later, also when two servers' clocks differ a little. */
function recordedAt({ order, now }: Work): string {
  const last = order.facts.at(-1);
  return new Date(Math.max(now.getTime(), last ? Date.parse(last.rec) + 1 : 0)).toISOString();
}

/** A device's clock may run ahead; nothing is recorded before it happened. */
const earlier = (at: string | undefined, now: string): string => (at && at < now ? new Date(at).toISOString() : now);

async function insert({ tx, order }: Work, facts: StoredFact[]): Promise<void> {
  const rows = facts.map(({ id, type, at, rec, by, byName, role, practice, ...body }) => ({ id, type, at, rec, by, by_name: byName, role, practice, body }));
  await tx.$executeRaw`INSERT INTO fact (order_id, id, type, at, rec, by, by_name, role, practice, body)
    SELECT ${order.id}::uuid, id, type, at, rec, by, by_name, role, practice, body
    FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(id text, type text, at timestamptz, rec timestamptz, by text, by_name text, role text, practice text, body jsonb)`;
}
