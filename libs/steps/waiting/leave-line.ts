import type { WaitingList } from '#libs/contracts/waiting';
import { noteChange } from '#libs/register/note-change';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import { lookForTheWaiting } from './offer-slots.js';
import { waitingPage } from './read-waiting-list.js';

/** Off the list; an open offer is taken back and may go to the next. The visit stays as it is. */
export async function leaveLine(deps: StepDeps, actor: Actor, entry: string): Promise<WaitingList> {
  return deps.db.practice(actor.practice, async (tx) => {
    const now = deps.clock.now();
    const known = await tx.waitingEntry.findUnique({ where: { id: entry }, select: { visitId: true } });
    if (!known) throw notFound();
    await tx.waitingEntry.updateMany({ where: { id: entry, state: 'waiting' }, data: { state: 'left', doneAt: now } });
    await tx.slotOffer.updateMany({ where: { entryId: entry, state: 'open' }, data: { state: 'taken', answeredAt: now } });
    await lookForTheWaiting(tx, actor.practice);
    await noteChange(tx, actor, 'leaveWaitingList', known.visitId);
    return waitingPage(tx, actor.practice);
  });
}
