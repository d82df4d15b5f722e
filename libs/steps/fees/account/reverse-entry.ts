import type { z } from 'zod';
import type { newReversal, OrderFees } from '#libs/contracts/fees';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, StepError } from '../../record/step-error.js';
import { feesOnly } from '../who-sees-fees.js';
import { isDone, openAccount } from './open-account.js';
import { orderFees } from './order-fees.js';
import { writeEntries } from './write-entry.js';

/** What was written down wrongly stays to be read, and counts no more. */
export async function reverseEntry(deps: StepDeps, actor: Actor, order: string, input: z.output<typeof newReversal>): Promise<OrderFees> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order, true);
    if (await isDone(tx, actor, order, input.key)) return;
    const entry = account.entries.find((e) => e.id === input.entry);
    if (!entry) throw badInput('entry', t('This entry is not one of the order’s. Reload the page and choose again.'));
    if (entry.reversed) throw new StepError('ALREADY_THERE', t('{by} has reversed this already: {why}', { by: entry.reversed.by, why: entry.reversed.why }));
    const { visit, words, amountMinor } = entry;
    await writeEntries(account, actor, role, 'reverseEntry', input.key, [{ visit, kind: 'reversal', words, amountMinor, why: input.why, reverses: entry.id }]);
  });
  return orderFees(deps, actor, order);
}
