import type { DataRequestList } from '#libs/contracts/requests';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { listRequests } from './list-requests.js';
import { ordersOfPerson } from './orders-of-person.js';
import { addEvent, lockRequest, managerOnly, ofKind, verifiedFirst } from './request-record.js';

/** The person is taken out everywhere at once, or, with one legal hold on one of their orders, nowhere. */
export async function eraseRequester(deps: StepDeps, actor: Actor, id: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    verifiedFirst(request);
    ofKind(request, 'erasure', 'This request does not ask for an erasure.');
    if (request.person.erased) return;
    const works = await ordersOfPerson(tx, deps, actor, request.person.id);
    refuseHeld(works.filter((w) => w.evaluation.order.legalHold).map((w) => w.order.accession));
    await tx.$queryRaw`SELECT app.erase_person(${request.person.id}::uuid, ${deps.clock.now()})`;
    for (const work of works) await append(work, [{ type: 'personErased', person: request.person.id }], { action: 'erasePerson', role: 'manager' });
    await addEvent(tx, deps, actor, id, 'erased', 'Name and every way to reach the person taken out; links ended; waiting mail dropped.');
    await addToOutbox(tx, 'write-tombstones', {}, { dedupe: 'tombstones' });
  });
  return listRequests(deps, actor);
}

/** A legal hold on any order of a person keeps the person. */
export function refuseHeld(accessions: string[]): void {
  if (accessions.length === 0) return;
  const words = `Nothing is erased as long as there is a legal hold on ${accessions.length === 1 ? 'order' : 'orders'} ${accessions.join(', ')}. The practice manager and a second person can lift it there.`;
  throw new StepError('HELD', words, { because: [{ code: 'LEGAL_HOLD', words }] });
}
