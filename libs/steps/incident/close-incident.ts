import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';

/** Closed once, with words; what was written stays. */
export async function closeIncident(deps: StepDeps, actor: Actor, order: string, incident: string, words: string): Promise<void> {
  if (!actor.roles.includes('manager')) throw new StepError('NOT_YOUR_ROLE', t('An incident is closed by the practice’s manager.'));
  await deps.db.practice(actor.practice, async (tx) => {
    const known = await tx.incident.findFirst({ where: { id: incident, orderId: order }, select: { closedAt: true } });
    if (!known) throw notFound();
    const { count } = await tx.incident.updateMany({ where: { id: incident, closedAt: null }, data: { closedAt: deps.clock.now(), closedBy: actor.name, words } });
    if (count === 0) throw new StepError(known.closedAt ? 'ALREADY_THERE' : 'NOT_FOUND', known.closedAt ? t('This incident was closed before. What was written stays.') : undefined);
    await audit(tx, { by: actor.id, role: 'manager', action: 'closeIncident', practice: actor.practice, order, subject: incident });
  });
}
