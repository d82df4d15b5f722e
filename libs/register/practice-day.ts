import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from './actor.js';

/** Today where the practice is. */
export async function practiceDay(tx: Tx, actor: Actor, now: Date): Promise<string> {
  const { zone } = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { zone: true } });
  return localDay(now.toISOString(), zone);
}
