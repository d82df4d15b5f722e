import type { Prices } from '#libs/contracts/register';
import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../record/actor.js';

/** What a practice reckons in, and its day. */
export interface OwnMoney { currency: string; zone: string; today: string }

export async function ownMoney(tx: Tx, actor: Actor, now: Date): Promise<OwnMoney> {
  const { prices, zone } = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { prices: true, zone: true } });
  return { currency: (prices as Prices).currency, zone, today: localDay(now.toISOString(), zone) };
}
