import type { z } from 'zod';
import { addIdentifier as contract, type Dog } from '#libs/contracts/register';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../actor.js';
import type { RegisterDeps } from '../deps.js';
import { noteChange } from '../note-change.js';
import { asDate, parseInput, pastDay } from '../parse-input.js';
import { practiceDay } from '../practice-day.js';
import { badInput } from '../refusal.js';
import { staffOnly } from '../who-may.js';
import { checkedIdentifier } from './checked-identifier.js';
import { dogIn, ownDog } from './dog-in.js';
import { refuseKnownNumber } from './refuse-known-number.js';

/** Tells the dog's open orders, in the same transaction; the steps know how. */
export type Restate = (tx: Tx, dog: string) => Promise<void>;

/** Another number from a day on. The one that stood until then ends on that day and stays in the record. */
export async function addIdentifier(deps: RegisterDeps, actor: Actor, dog: string, input: z.input<typeof contract>, restate?: Restate): Promise<Dog> {
  staffOnly(actor);
  const wanted = parseInput(contract, input);
  return deps.db.practice(actor.practice, async (tx) => {
    await ownDog(tx, actor, dog);
    const from = pastDay('from', wanted.from, await practiceDay(tx, actor, deps.clock.now()));
    const number = checkedIdentifier(wanted, '');
    await refuseKnownNumber(tx, actor, number, 'value', dog);
    const current = await tx.dogIdentifier.findMany({ where: { dogId: dog, until: null } });
    for (const old of current) {
      const since = old.from.toISOString().slice(0, 10);
      if (from < since) throw badInput('from', t('The number in the record is from {since}; the new one cannot start before it.', { since }));
    }
    await tx.dogIdentifier.updateMany({ where: { dogId: dog, until: null }, data: { until: asDate(from) } });
    await tx.dogIdentifier.create({ data: { practiceId: actor.practice, dogId: dog, ...number, from: asDate(from) } });
    await noteChange(tx, actor, 'addIdentifier', dog);
    await restate?.(tx, dog);
    return dogIn(tx, dog);
  });
}
