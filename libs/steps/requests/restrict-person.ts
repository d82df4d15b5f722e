import type { DataRequestList } from '#libs/contracts/requests';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { StepError } from '../record/step-error.js';
import { listRequests } from './list-requests.js';
import { addEvent, lockRequest, managerOnly, ofKind, verifiedFirst } from './request-record.js';

/** From now on the person's data are kept and not used: mail to them waits, and new visits are not booked for them. */
export async function restrictPerson(deps: StepDeps, actor: Actor, id: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    verifiedFirst(request);
    ofKind(request, 'restriction', 'This request does not ask for a restriction.');
    if (!request.restricted) await addEvent(tx, deps, actor, id, 'restricted', 'Kept and not used from now on.');
  });
  return listRequests(deps, actor);
}

/** Also after the request is closed: a restriction outlives its request. What waited is asked about again by the sweep. */
export async function liftRestriction(deps: StepDeps, actor: Actor, id: string, why: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    if (!request.restricted) throw new StepError('NOT_AT_THIS_STEP', t('There is no restriction to lift.'));
    await addEvent(tx, deps, actor, id, 'restrictionLifted', why);
  });
  return listRequests(deps, actor);
}
