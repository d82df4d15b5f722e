import type { DataRequestList } from '#libs/contracts/requests';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import type { StepDeps } from '../record/step-deps.js';
import { listRequests } from './list-requests.js';
import { ordersOfPerson } from './orders-of-person.js';
import { addEvent, lockRequest, managerOnly, ofKind, verifiedFirst } from './request-record.js';

/** The yes to the breed's statistics is taken back on every order of the person, whatever step it is at. No road moves. */
export async function objectToStatistics(deps: StepDeps, actor: Actor, id: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    verifiedFirst(request);
    ofKind(request, 'objection', 'This request is not an objection.');
    const agreed = (await ordersOfPerson(tx, deps, actor, request.person.id)).filter((w) => w.evaluation.order.statistics);
    for (const work of agreed) await append(work, [{ type: 'consentWithdrawn', purpose: 'statistics', why: 'Objection of the owner' }], { action: 'objectToStatistics', role: 'manager' });
    await addEvent(tx, deps, actor, id, 'objected', `Taken out of the breed’s statistics: ${agreed.length === 0 ? 'no order was in them' : agreed.map((w) => w.order.accession).join(', ')}. The next sets leave it out. Sets frozen before are counts without a name or a dog, and stay.`);
  });
  return listRequests(deps, actor);
}
