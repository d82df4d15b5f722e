import type { OrderScreen } from '#libs/contracts/screens/order';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { notFound } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import { orderScreen } from './order-screen.js';
import { SCREEN } from './screen-sql.js';
import type { ScreenSource } from './screen-source.js';

export async function readOrderScreen(deps: StepDeps, actor: Actor, order: string): Promise<OrderScreen> {
  const [source] = await deps.db.read<ScreenSource>({ practice: actor.practice }, SCREEN, [order, actor.id, actor.roles[0] ?? 'none', actor.practice]);
  if (!source) throw notFound();
  return orderScreen(source, actor, deps.clock.now());
}

/** The same page from inside the transaction that has just changed the order. */
export async function screenAfter(work: Work): Promise<OrderScreen> {
  const { tx, order, actor, now } = work;
  const [source] = await tx.$queryRawUnsafe<ScreenSource[]>(SCREEN, order.id, actor.id, actor.roles[0] ?? 'none', actor.practice);
  if (!source) throw notFound();
  return orderScreen(source, actor, now);
}
