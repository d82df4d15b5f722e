import { canBeTried, type Channels } from '#libs/contracts/dispatch';
import { addToOutbox } from '#libs/platform/database/outbox';
import { channelsIn } from '#libs/register/practice/centre-channels';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import { noteChange } from '#libs/register/note-change';
import { managersOnly } from '#libs/register/who-may';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';

/** Whether a channel leads to the centre, asked by a person and answered by the worker, who alone may read its secret. One question at a time. */
export function askTrial(deps: StepDeps & WithSecrets, actor: Actor, centre: string): Promise<Channels> {
  managersOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    if ((await tx.centre.count({ where: { id: centre } })) === 0) throw notFound();
    const channel = (await channelsIn(tx, deps)).rows.find((row) => row.centre === centre);
    if (!channel || !canBeTried(channel.kind)) throw new StepError('NOT_AT_THIS_STEP', t('Films go to this centre by a mail, and no line is there to be tried.'));
    if (channel.trial && channel.trial.answer === null) return channelsIn(tx, deps);
    const [trial] = await tx.$queryRaw<{ id: string }[]>`INSERT INTO channel_trial (practice_id, channel_id, at, by, by_name)
      VALUES (${actor.practice}::uuid, ${channel.id}::uuid, ${deps.clock.now()}, ${actor.id}, ${actor.name}) RETURNING id`;
    await addToOutbox(tx, 'try-channel', { trial: trial!.id }, { dedupe: trial!.id });
    await noteChange(tx, actor, 'tryChannel', centre, { kind: channel.kind });
    return channelsIn(tx, deps);
  });
}
