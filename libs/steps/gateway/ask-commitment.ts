import type { Asked } from '#libs/dicom/commitment';
import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { StepDeps } from '../record/step-deps.js';
import type { Sender } from './find-console.js';

/** Notes what a machine wants to know. One that listens at a port of its own is called there; another must be told at once, on its line. */
export async function askCommitment({ db, clock }: StepDeps, sender: Sender, asked: Asked, from: { called: string; address: string }): Promise<{ commitment: string; tell: 'here' | 'byCall' }> {
  const { practice, console } = sender;
  return db.practice(practice, async (tx) => {
    const { port } = await tx.console.findUniqueOrThrow({ where: { id: console }, select: { port: true } });
    const { id } = await tx.commitment.create({ data: { ...from, practiceId: practice, consoleId: console, transactionUid: asked.transaction, asked: asked.images.map((image) => ({ ...image })), at: clock.now() } });
    await audit(tx, { by: console, role: 'queue', action: 'askCommitment', practice, subject: id, detail: { from: sender.name, images: asked.images.length } });
    if (port !== null) await addToOutbox(tx, 'answer-commitment', { practice, commitment: id }, { dedupe: id });
    return { commitment: id, tell: port === null ? 'here' : 'byCall' };
  });
}
