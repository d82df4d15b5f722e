import type { z } from 'zod';
import { assignImage as assigned, setAsideImage as setAside, type Unmatched } from '#libs/contracts/gateway';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { staffOnly } from '#libs/register/who-may';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound, StepError } from '../record/step-error.js';
import { addToOrder } from './receive-image.js';
import { followImage } from './settle-performed.js';
import { openImage, unmatchedIn } from './unmatched.js';

/** A person says which order an image belongs to. It waits there to be named; whether it is that dog's is asked when it is. */
export async function assignImage(deps: StepDeps, actor: Actor, image: string, { order }: z.output<typeof assigned>): Promise<Unmatched> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const row = await openImage(tx, image);
    if (!(await tx.order.findUnique({ where: { id: order }, select: { id: true } }))) throw badInput('order', t('There is no such order here. Choose one from the list.'));
    await addToOrder(tx, order, { ...row, by: actor.id });
    await settle(tx, deps, actor, image, { settledOrder: order });
    await followImage(tx, deps, actor, row.sopUid);
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'assignImage', practice: actor.practice, order, subject: row.sha256 });
    return unmatchedIn(tx, deps, actor.practice);
  });
}

/** A test picture, or one of a dog that is no concern of this program. It is kept, and leaves the tray. */
export async function setAsideImage(deps: StepDeps, actor: Actor, image: string, { why }: z.output<typeof setAside>): Promise<Unmatched> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const { sha256 } = await openImage(tx, image);
    await settle(tx, deps, actor, image, { settledWhy: why });
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'setAsideImage', practice: actor.practice, subject: sha256, detail: { why } });
    return unmatchedIn(tx, deps, actor.practice);
  });
}

/** An image at an order that is no film of it. It is kept, and everybody who sees the order can be told who left it out, and why. */
export async function leaveOut(deps: StepDeps, actor: Actor, order: string, sha256: string, { why }: z.output<typeof setAside>): Promise<void> {
  staffOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const record = await lockOrder(tx, order);
    const row = await tx.receivedImage.findFirst({ where: { sha256, OR: [{ orderId: order }, { settledOrder: order }] } });
    if (!record || !row) throw notFound();
    if (row.leftOutAt || record.facts.some((f) => f.type === 'exposureTaken' && f.image === sha256)) throw new StepError('ALREADY_THERE', t('Somebody has named this image, or left it out, already. Look at the order again.'));
    await tx.receivedImage.update({ where: { id: row.id }, data: { leftOutAt: deps.clock.now(), leftOutBy: actor.id, leftOutByName: actor.name, leftOutWhy: why } });
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'leaveImageOut', practice: actor.practice, order, subject: sha256, detail: { why } });
  });
}

async function settle(tx: Tx, { clock }: StepDeps, { id, name }: Actor, image: string, how: { settledOrder: string } | { settledWhy: string }): Promise<void> {
  await tx.receivedImage.updateMany({ where: { id: image, settledAt: null }, data: { settledAt: clock.now(), settledBy: id, settledByName: name, ...how } });
}
