import type { z } from 'zod';
import type { joinWaiting, WaitingList } from '#libs/contracts/waiting';
import { isOpenVisit } from '#libs/pathway/steps';
import { noteChange } from '#libs/register/note-change';
import { t } from '#libs/words/spoken';
import { ownersByMail } from '../messages/say-to-owner.js';
import type { Actor } from '../record/actor.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound, StepError } from '../record/step-error.js';
import { workOn } from '../record/work.js';
import { lookForTheWaiting } from './offer-slots.js';
import { waitingPage } from './read-waiting-list.js';

/** An earlier time is wanted for a visit. The visit keeps the time it has until its owner says yes to another. */
export async function joinLine(deps: StepDeps, actor: Actor, orderId: string, input: z.output<typeof joinWaiting>): Promise<WaitingList> {
  return deps.db.practice(actor.practice, async (tx) => {
    const order = await lockOrder(tx, orderId);
    if (!order) throw notFound();
    const now = deps.clock.now();
    const work = workOn(tx, now, actor, order, deps.publicUrl);
    const visit = work.evaluation.visits[input.visit];
    if (!visit) throw notFound();
    const known = await tx.waitingEntry.findUnique({ where: { id: input.key }, select: { id: true } });
    if (known) return waitingPage(tx, actor.practice);
    if (order.practice !== actor.practice || !isOpenVisit(visit.step) || !['wanted', 'booked'].includes(visit.step)) throw new StepError('NOT_AT_THIS_STEP', t('Only a visit that has not begun can wait for an earlier time.'));
    if (visit.day && input.fromDay && input.fromDay >= visit.day) throw badInput('fromDay', t('The visit is on {day} already. Choose an earlier day, or leave it empty.', { day: visit.day }));
    const [owner] = await ownersByMail(work);
    if (!owner) throw new StepError('HELD', t('No owner of this dog has a mail address, and offers go by mail. Add one under the dog’s people, or move the visit by phone.'));
    const already = await tx.waitingEntry.findFirst({ where: { visitId: visit.id, state: 'waiting' }, select: { id: true } });
    if (already) throw new StepError('ALREADY_THERE', t('This visit is on the waiting list already.'));
    await tx.waitingEntry.create({
      data: { id: input.key, practiceId: actor.practice, orderId, visitId: visit.id, personId: owner.id, by: actor.id, createdAt: now, lookedAt: now, ...(input.fromDay ? { fromDay: new Date(`${input.fromDay}T00:00:00Z`) } : {}) },
    });
    await lookForTheWaiting(tx, actor.practice);
    await noteChange(tx, actor, 'joinWaitingList', visit.id);
    return waitingPage(tx, actor.practice);
  });
}
