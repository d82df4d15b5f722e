import type { z } from 'zod';
import type { setAsideImage, Unmatched } from '#libs/contracts/gateway';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { staffOnly } from '#libs/register/who-may';
import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound, StepError } from '../record/step-error.js';
import { orderOfImages } from './hear-performed.js';
import { unmatchedIn } from './unmatched.js';

/** A trial of the machine, or work on a dog that is no concern of this program. What it said is kept, and leaves the tray. `row` is the first thing that it said. */
export async function setAsidePerformed(deps: StepDeps, actor: Actor, row: string, { why }: z.output<typeof setAsideImage>): Promise<Unmatched> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const first = await tx.performedStep.findFirst({ where: { id: row, practiceId: actor.practice, place: 0 } });
    if (!first || (await tx.performedStep.count({ where: { practiceId: actor.practice, sopUid: first.sopUid, orderId: { not: null } } })) > 0) throw notFound();
    if (!(await settle(tx, deps, actor, first.sopUid, { why }))) throw new StepError('ALREADY_THERE', t('Somebody has settled this already. Reload the list.'));
    await audit(tx, { by: actor.id, role: actor.roles[0] ?? 'none', action: 'setAsidePerformed', practice: actor.practice, subject: first.sopUid, detail: { why } });
    return unmatchedIn(tx, deps, actor.practice);
  });
}

/** An image was put into an order: a step without one that made it goes there too, once all of its images that came are there. */
export async function followImage(tx: Tx, deps: StepDeps, actor: Actor, image: string): Promise<void> {
  const steps = await tx.$queryRaw<{ step: string; images: string[] }[]>`
    SELECT sop_uid AS step, (array_agg(said->'images' ORDER BY place DESC) FILTER (WHERE said ? 'images'))[1] AS images FROM performed_step
    WHERE practice_id = ${actor.practice}::uuid AND order_id IS NULL GROUP BY sop_uid HAVING bool_or(said->'images' @> to_jsonb(${image}::text))`;
  for (const { step, images } of steps) {
    const order = await orderOfImages(tx, actor.practice, images);
    if (order) await settle(tx, deps, actor, step, { orderId: order });
  }
}

async function settle(tx: Tx, { clock }: StepDeps, { id, name, practice }: Actor, sopUid: string, how: { orderId: string } | { why: string }): Promise<boolean> {
  const { count } = await tx.performedSettled.createMany({ data: [{ practiceId: practice, sopUid, at: clock.now(), by: id, byName: name, ...how }], skipDuplicates: true });
  return count > 0;
}
