import type { Tx } from '#libs/platform/database/db';
import { digestCameBack } from '../chase/digest-came-back.js';
import { queueActor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import { workOn, type Stated, type Work } from '../record/work.js';
import type { StepDeps } from '../record/step-deps.js';
import type { MessageRow } from './message-row.js';

export type Outcome = 'delivered' | 'bounced' | 'unknown' | 'failed';

/** What became of a message, on its row; for letters and packages it is a fact of the order too. */
export async function noteOutcome(deps: StepDeps, m: MessageRow, outcome: Outcome, detail: string): Promise<void> {
  await deps.db.system('note an outcome', async (tx) => {
    await noteIn(tx, deps, m, outcome, detail);
  });
}

export async function noteIn(tx: Tx, deps: StepDeps, m: MessageRow, outcome: Outcome, detail: string): Promise<void> {
  const now = deps.clock.now();
  const state = outcome === 'failed' ? 'bounced' : outcome;
  await tx.$executeRaw`UPDATE message SET state = ${state}, detail = ${detail.slice(0, 500)}, done_at = ${now} WHERE id = ${m.id}::uuid`;
  if (m.kind === 'chase' && state === 'bounced') await digestCameBack(tx, deps, m.id);
  if (!m.orderId || !m.subjectId) return;
  const order = await lockOrder(tx, m.orderId);
  if (!order) return;
  const work = workOn(tx, now, queueActor(order.practice), order, deps.publicUrl);
  const stated = factsFor(work, m, outcome);
  if (stated.length > 0) await append(work, stated, { action: 'noteOutcome' });
}

function factsFor(work: Work, m: MessageRow, outcome: Outcome): Stated[] {
  if (m.kind === 'package') {
    const sent = work.facts('packageSent').find((f) => f.send === m.subjectId);
    return sent ? [{ type: 'sendOutcome', study: sent.study, send: sent.send, outcome: outcome === 'delivered' ? 'handedOver' : outcome }] : [];
  }
  const letter = work.facts('letterReleased').find((f) => f.letter === m.subjectId);
  if (!letter || !m.personId) return [];
  return [{ type: 'letterOutcome', study: letter.study, letter: letter.letter, to: m.personId, outcome: outcome === 'failed' ? 'bounced' : outcome }];
}
