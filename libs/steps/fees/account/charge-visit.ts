import type { z } from 'zod';
import type { newCharges, OrderFees } from '#libs/contracts/fees';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput } from '../../record/step-error.js';
import { feesOnly } from '../who-sees-fees.js';
import { isDone, knownVisit, openAccount, type Account } from './open-account.js';
import { orderFees } from './order-fees.js';
import { acceptedEstimate } from './visit-account.js';
import { writeEntries, type Entry } from './write-entry.js';

type Charges = z.output<typeof newCharges>;

/** Lines of the accepted estimate, as it was read out, and lines beside it with a reason. All of them or none. */
export async function chargeVisit(deps: StepDeps, actor: Actor, order: string, input: Charges): Promise<OrderFees> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order, true);
    if (await isDone(tx, actor, order, input.key)) return;
    const visit = knownVisit(account, input.visit);
    if (input.estimateLines.length + input.added.length === 0) throw badInput('estimateLines', t('Choose a line of the estimate, or add one.'));
    const added = input.added.map((line): Entry => ({ visit, kind: 'charge', ...line }));
    await writeEntries(account, actor, role, 'chargeVisit', input.key, [...ofEstimate(account, input), ...added]);
  });
  return orderFees(deps, actor, order);
}

function ofEstimate(account: Account, { visit, estimateLines }: Charges): Entry[] {
  if (estimateLines.length === 0) return [];
  const accepted = acceptedEstimate(account.work, visit);
  if (!accepted) throw badInput('estimateLines', t('Nobody has accepted an estimate for this visit. Add the lines, each with a reason.'));
  if (accepted.currency !== account.currency) throw badInput('estimateLines', t('The estimate is in {currency}, and your practice reckons in {currency2}. Add the lines in {currency2}, each with a reason.', { currency: accepted.currency, currency2: account.currency }));
  return estimateLines.map((line, i) => {
    const found = accepted.lines[line];
    if (!found) throw badInput(`estimateLines.${i}`, t('The estimate has no such line. Reload the page and choose again.'));
    const twice = estimateLines.indexOf(line) !== i || account.entries.some((e) => e.kind === 'charge' && !e.reversed && e.estimateId === accepted.id && e.estimateLine === line);
    if (twice) throw badInput(`estimateLines.${i}`, t('“{words}” is charged already. Reverse that line first, if it is to be charged anew.', { words: found.words }));
    return { visit, kind: 'charge', words: found.words, amountMinor: found.amountMinor, estimate: { id: accepted.id, line } };
  });
}
