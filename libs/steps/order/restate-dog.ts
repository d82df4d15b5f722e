import type { Restate } from '#libs/register/dogs/add-identifier';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../record/actor.js';
import { append } from '../record/append.js';
import { lockOrder } from '../record/order-record.js';
import type { StepDeps } from '../record/step-deps.js';
import { workOn, type Stated } from '../record/work.js';

/** The dog's open orders of this practice learn its numbers and birth as they are now, so that the next scan is compared with those. */
export const restateDog = (deps: StepDeps, actor: Actor): Restate => async (tx, dog) => {
  const open = await tx.order.findMany({ where: { dogId: dog, practiceId: actor.practice, closed: false }, select: { id: true }, orderBy: { id: 'asc' } });
  if (open.length === 0) return;
  const restated = await dogNow(tx, dog);
  for (const { id } of open) {
    const order = await lockOrder(tx, id);
    if (order) await append(workOn(tx, deps.clock.now(), actor, order, deps.publicUrl), [restated], { action: 'restateDog' });
  }
};

async function dogNow(tx: Tx, dog: string): Promise<Stated> {
  const row = await tx.dog.findUniqueOrThrow({ where: { id: dog }, select: { bornEarliest: true, bornLatest: true, bornPrecision: true } });
  const numbers = await tx.dogIdentifier.findMany({ where: { dogId: dog, kind: { not: 'none' }, until: null }, select: { value: true } });
  const day = (date: Date) => date.toISOString().slice(0, 10);
  return { type: 'dogRestated', numbers: numbers.map((n) => n.value), birth: { date: day(row.bornEarliest), latest: day(row.bornLatest), precision: row.bornPrecision as 'day' } };
}
