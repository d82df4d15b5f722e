import type { Closures } from '#libs/contracts/people';
import type { Tx } from '#libs/platform/database/db';
import { audit } from '#libs/platform/audit/audit';
import { asDate } from '#libs/register/parse-input';
import { staffOnly } from '#libs/register/who-may';
import { t } from '#libs/words/spoken';
import { sayToOwners } from '../messages/say-to-owner.js';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { badInput, notFound, StepError } from '../record/step-error.js';
import { workOn, type Work } from '../record/work.js';
import { closureFacts } from './closure-facts.js';

interface Heard { from: string; until?: string | undefined; how: string }

/** What this practice has heard: closed from a day to another, or for good. Its open orders with films there learn of it at once. */
export async function closeCentre(deps: StepDeps, actor: Actor, centre: string, heard: Heard): Promise<Closures> {
  if (!actor.roles.some((r) => r === 'desk' || r === 'manager')) throw new StepError('NOT_YOUR_ROLE', t('The desk or the practice manager writes down that a centre is closed.'));
  if (heard.until !== undefined && heard.until < heard.from) throw badInput('until', t('The last day lies before the first one.'));
  return deps.db.practice(actor.practice, async (tx) => {
    const now = deps.clock.now();
    if (!(await tx.centre.findUnique({ where: { id: centre }, select: { id: true } }))) throw notFound();
    await tx.centreClosure.create({ data: { practiceId: actor.practice, centreId: centre, from: asDate(heard.from), until: heard.until === undefined ? null : asDate(heard.until), how: heard.how, byName: actor.name, at: now } });
    await audit(tx, { at: now, by: actor.id, role: actor.roles[0] ?? 'none', action: 'closeCentre', practice: actor.practice, subject: centre, detail: { name: actor.name } });
    const orders = await tx.$queryRaw<{ id: string }[]>`SELECT DISTINCT o.id FROM orders o JOIN study s ON s.order_id = o.id WHERE o.practice_id = ${actor.practice}::uuid AND s.open AND s.centre_id = ${centre}::uuid ORDER BY o.id`;
    for (const { id } of orders) {
      const order = await lockOrder(tx, id);
      if (!order) continue;
      const work = workOn(tx, now, actor, order, deps.publicUrl);
      await append(work, await closureFacts(work, centre), { action: 'closeCentre', role: actor.roles.includes('desk') ? 'desk' : 'manager' });
      if (heard.until === undefined) await tellOwners(work, centre);
    }
    return closuresIn(tx, actor);
  });
}

export function readClosures(deps: StepDeps, actor: Actor): Promise<Closures> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, (tx) => closuresIn(tx, actor));
}

/** Where films are already with the centre, its owner has waited long enough to be told. */
async function tellOwners(work: Work, centre: string): Promise<void> {
  const out = Object.values(work.evaluation.studies).some((s) => s.centre === centre && ['sealed', 'sent', 'withCentre', 'appealed'].includes(s.step));
  if (!out) return;
  const dog = await work.tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
  await sayToOwners(work, { once: `centre-closed:${work.order.id}:${centre}`, kind: 'centreClosed', template: 'centreClosed', data: { dog: dog.callName, centre: work.order.centres[centre]?.name ?? 'The reading centre' } });
}

async function closuresIn(tx: Tx, actor: Actor): Promise<Closures> {
  const rows = await tx.centreClosure.findMany({ where: { practiceId: actor.practice }, orderBy: { from: 'desc' }, take: 100 });
  const day = (d: Date) => d.toISOString().slice(0, 10);
  return { rows: rows.map((r) => ({ centre: r.centreId, from: day(r.from), until: r.until && day(r.until), how: r.how, by: r.byName })) };
}
