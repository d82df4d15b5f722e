import { randomUUID } from 'node:crypto';
import { audit } from '#libs/platform/audit/audit';
import type { Actor } from '../../record/actor.js';
import { asDate } from '#libs/register/parse-input';
import type { Account } from './open-account.js';

export interface Entry {
  visit: string;
  kind: 'charge' | 'payment' | 'refund' | 'agreement' | 'reversal';
  words: string;
  amountMinor: number;
  why?: string;
  estimate?: { id: string; line: number };
  reverses?: string;
  day?: string;
  how?: string;
  person?: string;
  receipt?: string;
}

/** Appends entries in one breath; the first carries the request's key. */
export async function writeEntries({ work, currency }: Account, actor: Actor, role: string, action: string, key: string, entries: Entry[]): Promise<void> {
  const { tx, now, order } = work;
  for (const [i, e] of entries.entries()) {
    await tx.feeEntry.create({
      data: {
        id: i === 0 ? key : randomUUID(), practiceId: actor.practice, orderId: order.id, visitId: e.visit, kind: e.kind, words: e.words, amountMinor: e.amountMinor, currency, at: now, by: actor.id, byName: actor.name,
        why: e.why ?? null, estimateId: e.estimate?.id ?? null, estimateLine: e.estimate?.line ?? null, reverses: e.reverses ?? null, day: e.day ? asDate(e.day) : null, how: e.how ?? null, personId: e.person ?? null, receipt: e.receipt ?? null,
      },
    });
  }
  await audit(tx, { at: now, by: actor.id, role, action, practice: actor.practice, order: order.id, subject: key, detail: { name: actor.name, entries: entries.length } });
}
