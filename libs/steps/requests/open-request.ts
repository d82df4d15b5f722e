import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { DataRequestList, newDataRequest } from '#libs/contracts/requests';
import { audit } from '#libs/platform/audit/audit';
import { ownPerson } from '#libs/register/people/write-person';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput } from '../record/step-error.js';
import { listRequests } from './list-requests.js';
import { managerOnly, todayAt } from './request-record.js';

/** The clock runs from the day on which it was asked, not from the day on which it was entered. */
export async function openRequest(deps: StepDeps, actor: Actor, input: z.output<typeof newDataRequest>): Promise<DataRequestList> {
  managerOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const at = deps.clock.now();
    await ownPerson(tx, actor, input.person, 'person');
    const { today } = await todayAt(tx, actor.practice, at);
    if (input.received > today) throw badInput('received', t('This day is still to come. Write the day on which it was asked.'));
    const id = randomUUID();
    await tx.dataRequest.create({ data: { id, practiceId: actor.practice, personId: input.person, kind: input.kind, asked: input.asked, received: new Date(`${input.received}T00:00:00Z`), at, by: actor.id, byName: actor.name } });
    await audit(tx, { at, by: actor.id, role: 'manager', action: 'openDataRequest', practice: actor.practice, subject: id, detail: { name: actor.name, kind: input.kind } });
  });
  return listRequests(deps, actor);
}
