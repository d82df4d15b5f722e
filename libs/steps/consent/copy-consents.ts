import { said } from '#libs/words/said';
import { queueActor } from '../record/actor.js';
import { readOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn } from '../record/work.js';
import { hashOf, storeDocument } from '../report/store-document.js';
import { consentCopySnapshot } from './consent-copy-snapshot.js';

/** What an owner signed is a paper of theirs, made anew when an answer changes; the earlier ones stay. */
export async function copyConsents(deps: StepDeps, order: string): Promise<void> {
  await deps.db.system('copy consents', async (tx) => {
    const record = await readOrder(tx, order);
    if (!record) return;
    const work = workOn(tx, deps.clock.now(), queueActor(record.practice), record, deps.publicUrl);
    for (const signer of new Set(work.facts('consentGiven').map((f) => f.signer))) {
      const snapshot = await consentCopySnapshot(work, signer);
      if (!snapshot) continue;
      const known = await tx.document.findFirst({ where: { orderId: order, kind: 'consentCopy', snapshotHash: hashOf(snapshot) }, select: { id: true } });
      if (!known) await storeDocument(work, { kind: 'consentCopy', named: said('What was agreed'), snapshot, subject: signer, forOwner: true });
    }
  });
}
