import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import { lockOrder, readOrder } from '../../record/order-record.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, notFound } from '../../record/step-error.js';
import { workOn, type Work } from '../../record/work.js';
import { ownMoney, type OwnMoney } from '../own-money.js';
import { ENTRIES, type EntryRow } from './account-sql.js';

/** An order with what this practice has written down about its money. */
export interface Account extends OwnMoney {
  work: Work;
  entries: EntryRow[];
}

/** With `lock` nobody else writes to it until the transaction ends. */
export async function openAccount(tx: Tx, deps: StepDeps, actor: Actor, order: string, lock = false): Promise<Account> {
  const record = await (lock ? lockOrder(tx, order) : readOrder(tx, order));
  if (!record) throw notFound();
  const now = deps.clock.now();
  const entries = await tx.$queryRawUnsafe<EntryRow[]>(ENTRIES, order, actor.practice);
  return { ...(await ownMoney(tx, actor, now)), work: workOn(tx, now, actor, record, deps.publicUrl), entries: entries.map((e) => ({ ...e, day: e.day && dayOf(e.day) })) };
}

/** Prisma gives a date column as a moment. */
const dayOf = (day: string | Date): string => (typeof day === 'string' ? day : day.toISOString()).slice(0, 10);

/** The same request twice is one. True when it has been done; a key that was used for something else is refused. */
export async function isDone(tx: Tx, actor: Actor, order: string, key: string): Promise<boolean> {
  const found = await tx.feeEntry.findUnique({ where: { practiceId_id: { practiceId: actor.practice, id: key } }, select: { orderId: true } });
  if (found && found.orderId !== order) throw badInput('key', t('This has been sent for another order. Reload the page and enter it again.'));
  return found !== null;
}

export function knownVisit({ work }: Account, visit: string): string {
  if (!(visit in work.evaluation.visits)) throw badInput('visit', t('This visit is not one of the order’s. Reload the page and choose again.'));
  return visit;
}
