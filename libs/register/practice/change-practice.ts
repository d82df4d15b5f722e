import type { PracticeScreen } from '#libs/contracts/register';
import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { practiceScreenIn } from './practice-screen.js';

export interface Changing {
  tx: Tx;
  actor: Actor;
  now: Date;
  practice: { id: string; schemeId: string; zone: string };
  today: string;
}

/** One change of the practice's register; answers with the page as it is then. */
export function changePractice(deps: RegisterDeps, actor: Actor, change: (work: Changing) => Promise<void>): Promise<PracticeScreen> {
  return deps.db.practice(actor.practice, async (tx) => {
    const practice = await tx.practice.findUniqueOrThrow({ where: { id: actor.practice }, select: { id: true, schemeId: true, zone: true } });
    const now = deps.clock.now();
    await change({ tx, actor, now, practice, today: localDay(now.toISOString(), practice.zone) });
    return practiceScreenIn(tx, actor, now);
  });
}
