import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';

/** The button beside a problem: the job runs again, and the problem is gone until it fails again. */
export async function retryProblem(deps: StepDeps, actor: Actor, order: string, problem: string): Promise<void> {
  await deps.db.practice(actor.practice, async (tx) => {
    const row = await tx.problem.findFirst({ where: { id: problem, orderId: order, resolvedAt: null } });
    if (!row) throw notFound();
    await tx.problem.update({ where: { id: problem }, data: { resolvedAt: deps.clock.now(), resolvedBy: actor.name } });
    await addToOutbox(tx, row.job, row.payload as Record<string, string>);
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'retryProblem', practice: actor.practice, order, subject: problem });
  });
}
