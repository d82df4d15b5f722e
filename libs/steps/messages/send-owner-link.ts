import { randomUUID } from 'node:crypto';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { audit } from '#libs/platform/audit/audit';
import { say } from './say.js';

/** A fresh link to the owner's page; the worker revokes the earlier ones when it makes this one. */
export async function sendOwnerLink(deps: StepDeps, actor: Actor, order: string): Promise<void> {
  await deps.db.practice(actor.practice, async (tx) => {
    const row = await tx.order.findUnique({ where: { id: order }, select: { dogId: true, practiceId: true } });
    if (!row) throw notFound();
    const dog = await tx.dog.findUniqueOrThrow({ where: { id: row.dogId }, select: { callName: true } });
    const roles = await tx.dogRole.findMany({ where: { dogId: row.dogId, role: 'owner', until: null }, select: { personId: true } });
    const owners = await tx.person.findMany({ where: { id: { in: roles.map((r) => r.personId) }, email: { not: null } } });
    if (owners.length === 0) throw new StepError('HELD', 'No owner of this dog has a mail address. Add one under the dog’s people.');
    for (const owner of owners) {
      await say(tx, { once: `owner-link:${order}:${owner.id}:${randomUUID()}`, kind: 'consentLink', template: 'ownerLink', order, practice: row.practiceId, to: { person: owner.id, name: owner.name, email: owner.email! }, data: { dog: dog.callName } });
    }
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'sendOwnerLink', practice: actor.practice, order });
  });
}
