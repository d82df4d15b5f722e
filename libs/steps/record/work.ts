import { evaluate } from '#libs/pathway/evaluate';
import type { Evaluation } from '#libs/pathway/evaluation';
import type { Fact, FactType, Payloads } from '#libs/pathway/facts';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from './actor.js';
import type { OrderRecord } from './order-record.js';

/** A fact as a use case states it; who, when and where are added by the record. */
export type Stated = { [T in FactType]: { type: T; id?: string; at?: string; detail?: Record<string, unknown>; corrects?: string } & Payloads[T] }[FactType];

/** What a use case has in its hands: one order, locked, as it stands now. */
export interface Work {
  tx: Tx;
  now: Date;
  actor: Actor;
  order: OrderRecord;
  evaluation: Evaluation;
  /** What people's browsers call this server by; printed on papers. */
  publicUrl: string;
  /** Looks up facts of one kind, oldest first. */
  facts<T extends FactType>(type: T): Extract<Fact, { type: T }>[];
}

export function workOn(tx: Tx, now: Date, actor: Actor, order: OrderRecord, publicUrl: string): Work {
  const evaluation = evaluate(order.facts, now.toISOString(), order.rules);
  return { tx, now, actor, order, evaluation, publicUrl, facts: (type) => order.facts.filter((f): f is Extract<typeof f, { type: typeof type }> => f.type === type) as never };
}
