import type { Closing } from '#libs/contracts/people';
import { stepLabels } from '#libs/pathway/words';
import type { Tx } from '#libs/platform/database/db';
import { audit } from '#libs/platform/audit/audit';
import { practiceDay } from '#libs/register/practice-day';
import { staffOnly } from '#libs/register/who-may';
import { t } from '#libs/words/spoken';
import { stepName } from '#libs/register/spoken-names';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, StepError } from '../record/step-error.js';
import { workOn } from '../record/work.js';
import { lastDayOf } from './refuse-while-closing.js';

/** From here on every open order waits to be handed over, one by one, each with its owner's yes; no new one is opened. */
export async function closePractice(deps: StepDeps, actor: Actor, { lastDay }: { lastDay: string }): Promise<Closing> {
  if (!actor.roles.includes('manager')) throw new StepError('NOT_YOUR_ROLE', t('Only the practice manager closes a practice.'));
  return deps.db.practice(actor.practice, async (tx) => {
    const now = deps.clock.now();
    if (lastDay < (await practiceDay(tx, actor, now))) throw badInput('lastDay', t('This day has passed. Name the last day on which somebody is here.'));
    await tx.$executeRaw`SELECT 1 FROM practice WHERE id = ${actor.practice}::uuid FOR UPDATE`;
    const { policy } = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { policy: true } });
    const known = lastDayOf(policy);
    if (known) throw new StepError('ALREADY_THERE', t('The practice closes on {known} already; the orders below wait to be handed over.', { known }));
    await tx.practice.update({ where: { id: actor.practice }, data: { policy: { ...(policy as object), closing: { lastDay } } } });
    for (const { id } of await openOrders(tx, actor)) {
      const order = await lockOrder(tx, id);
      if (order) await append(workOn(tx, now, actor, order, deps.publicUrl), [{ type: 'practiceClosing', closing: actor.practice, lastDay }], { action: 'closePractice', role: 'manager' });
    }
    await audit(tx, { at: now, by: actor.id, role: 'manager', action: 'closePractice', practice: actor.practice, detail: { name: actor.name, lastDay } });
    return closingIn(tx, actor);
  });
}

/** The last day, if there is one, and what still has to be handed over. */
export function readClosing(deps: StepDeps, actor: Actor): Promise<Closing> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, (tx) => closingIn(tx, actor));
}

const openOrders = (tx: Tx, actor: Actor) => tx.order.findMany({ where: { practiceId: actor.practice, closed: false }, select: { id: true }, orderBy: { id: 'asc' } });

async function closingIn(tx: Tx, actor: Actor): Promise<Closing> {
  const { policy } = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { policy: true } });
  const lastDay = lastDayOf(policy);
  if (!lastDay) return { lastDay, orders: [] };
  const rows = await tx.$queryRaw<{ id: string; accession: string; dog: string; owner: string | null; step: keyof typeof stepLabels }[]>`
    SELECT o.id, o.accession, d.call_name AS dog, o.step, (SELECT p.name FROM dog_role r JOIN person p ON p.id = r.person_id WHERE r.dog_id = d.id AND r.role = 'owner' AND r.valid_until IS NULL ORDER BY r.valid_from DESC LIMIT 1) AS owner
    FROM orders o JOIN dog d ON d.id = o.dog_id WHERE o.practice_id = ${actor.practice}::uuid AND NOT o.closed ORDER BY o.accession LIMIT 500`;
  return { lastDay, orders: rows.map(({ id, accession, dog, owner, step }) => ({ id, accession, dog, owner: owner ?? '', stepLabel: stepName(step) })) };
}
