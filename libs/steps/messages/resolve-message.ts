import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';

/**
 * A person says what became of a mail whose outcome nobody knows: it came, or it is sent again. Letters and
 * packages have actions of their own, because their outcome is a fact of the order.
 */
export async function resolveMessage(deps: StepDeps, actor: Actor, order: string, message: string, arrived: boolean): Promise<void> {
  await deps.db.practice(actor.practice, async (tx) => {
    const row = await tx.message.findFirst({ where: { id: message, orderId: order } });
    if (!row) throw notFound();
    const changed = await tx.message.updateMany({ where: { id: message, state: { in: ['unknown', 'bounced'] } }, data: arrived ? { state: 'delivered', detail: `said by ${actor.name}` } : { state: 'waiting', claimedAt: null, detail: `to be sent again, said ${actor.name}` } });
    if (changed.count === 0) throw new StepError('NOT_AT_THIS_STEP', 'This mail does not wait for a person.');
    if (!arrived) await addToOutbox(tx, 'send-message', { message }, { dedupe: message });
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'resolveMessage', practice: actor.practice, order, subject: message, detail: { arrived } });
  });
}
