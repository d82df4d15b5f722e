import type { DataRequestList } from '#libs/contracts/requests';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, StepError } from '../record/step-error.js';
import { listRequests } from './list-requests.js';
import { addEvent, lockRequest, managerOnly, stillOpen, verifiedFirst } from './request-record.js';

/** Who asks was made sure of: how is written down, by whom and when adds itself. */
export async function verifyRequester(deps: StepDeps, actor: Actor, id: string, how: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    stillOpen(await lockRequest(tx, deps, actor, id));
    await addEvent(tx, deps, actor, id, 'verified', how);
  });
  return listRequests(deps, actor);
}

export async function extendRequest(deps: StepDeps, actor: Actor, id: string, input: { until: string; why: string }): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    stillOpen(request);
    if (request.overdue) throw new StepError('NOT_AT_THIS_STEP', t('The last day has passed. An extension is told to the person before it; now the request is answered.'));
    if (input.until <= request.due || input.until > request.latest) throw badInput('until', t('Choose a day after {due} and no later than {latest}.', { due: request.due, latest: request.latest }));
    await addEvent(tx, deps, actor, id, 'extended', input.why, input.until);
  });
  return listRequests(deps, actor);
}

export async function noteOnRequest(deps: StepDeps, actor: Actor, id: string, words: string): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    stillOpen(await lockRequest(tx, deps, actor, id));
    await addEvent(tx, deps, actor, id, 'noted', words);
  });
  return listRequests(deps, actor);
}

/** What the kind of request asks for has been done before it is called done. */
const DOES = { access: 'exported', erasure: 'erased', restriction: 'restricted', objection: 'objected' } as const;

export async function closeRequest(deps: StepDeps, actor: Actor, id: string, input: { outcome: 'done' | 'refused'; words: string }): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    stillOpen(request);
    if (input.outcome === 'done') {
      verifiedFirst(request);
      const needs = request.kind === 'correction' ? undefined : DOES[request.kind];
      if (needs && !request.events.some((e) => e.type === needs)) throw new StepError('NOT_AT_THIS_STEP', t('What was asked for has not been done yet. Do it first, or close the request as refused and say why.'));
    }
    await addEvent(tx, deps, actor, id, input.outcome, input.words);
  });
  return listRequests(deps, actor);
}
