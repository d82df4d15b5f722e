import type { z } from 'zod';
import { reachableDays, type ReachableDays } from '#libs/contracts/people';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { existingDay, parseInput } from '../parse-input.js';
import { managersOnly, staffOnly } from '../who-may.js';

interface Policy { quiet?: { from: number; to: number }; reachable?: { weekdays: number[]; closed: string[] } }

/** When an owner who has read a letter reaches somebody; letters wait for such a day, unless an owner wants them at once. */
export function setReachableDays(deps: RegisterDeps, actor: Actor, input: z.input<typeof reachableDays>): Promise<ReachableDays> {
  managersOnly(actor);
  const { weekdays, closed, quietFrom, quietTo } = parseInput(reachableDays, input);
  closed.forEach((day, i) => existingDay(`closed.${i}`, day));
  return deps.db.practice(actor.practice, async (tx) => {
    await tx.$executeRaw`SELECT 1 FROM practice WHERE id = ${actor.practice}::uuid FOR UPDATE`;
    const policy = await policyIn(tx, actor);
    const changed = { ...policy, quiet: { from: quietFrom, to: quietTo }, reachable: { weekdays: [...new Set(weekdays)].sort(), closed: [...new Set(closed)].sort() } };
    await tx.practice.update({ where: { id: actor.practice }, data: { policy: changed as object } });
    await noteChange(tx, actor, 'setReachableDays', actor.practice);
    return daysOf(changed);
  });
}

export function readReachableDays(deps: RegisterDeps, actor: Actor): Promise<ReachableDays> {
  staffOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => daysOf(await policyIn(tx, actor)));
}

async function policyIn(tx: Tx, actor: Actor): Promise<Policy> {
  return (await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { policy: true } })).policy as Policy;
}

const daysOf = ({ quiet, reachable }: Policy): ReachableDays => ({ weekdays: reachable?.weekdays ?? [1, 2, 3, 4, 5], closed: reachable?.closed ?? [], quietFrom: quiet?.from ?? 20, quietTo: quiet?.to ?? 8 });
