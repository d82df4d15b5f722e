import type { z } from 'zod';
import type { newAgreement, newPayment, OrderFees } from '#libs/contracts/fees';
import { pastDay } from '#libs/register/parse-input';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import { shortDay } from '../../record/day-words.js';
import { personName } from '../../record/person-name.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, StepError } from '../../record/step-error.js';
import { moneyWords, spokenMoney } from '../money-words.js';
import { feesOnly } from '../who-sees-fees.js';
import { isDone, knownVisit, openAccount } from './open-account.js';
import { orderFees } from './order-fees.js';
import { visitAccount } from './visit-account.js';
import { writeEntries } from './write-entry.js';

const HOW = { cash: 'in cash', card: 'by card', transfer: 'by transfer', other: 'in another way' } as const;

/** Money that came before or after the visit, or went back. */
export async function takePayment(deps: StepDeps, actor: Actor, order: string, input: z.output<typeof newPayment>): Promise<OrderFees> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order, true);
    if (await isDone(tx, actor, order, input.key)) return;
    const visit = knownVisit(account, input.visit);
    pastDay('day', input.day, account.today);
    await personName(account.work, input.person);
    const same = account.entries.find((e) => e.kind === input.kind && !e.reversed && e.receipt === input.receipt);
    if (same) throw new StepError('ALREADY_THERE', t('Receipt {receipt} is written down already, by {by}: {amountMinor}. Nothing was added.', { receipt: input.receipt, by: same.by, amountMinor: spokenMoney(same.amountMinor, same.currency) }));
    const { paidMinor } = visitAccount(account.work, visit, account.entries, account.currency);
    if (input.kind === 'refund' && input.amountMinor > paidMinor) throw badInput('amountMinor', t('Only {max} was paid for this visit. No more than that can be given back.', { max: spokenMoney(Math.max(0, paidMinor), account.currency) }));
    const words = `${input.kind === 'payment' ? 'Paid' : 'Given back'} on ${shortDay(input.day)} ${HOW[input.how]}`;
    const { kind, amountMinor, day, how, person, receipt } = input;
    await writeEntries(account, actor, role, kind === 'payment' ? 'takePayment' : 'giveBack', input.key, [{ visit, kind, words, amountMinor, day, how, person, receipt }]);
  });
  return orderFees(deps, actor, order);
}

const SAID = { phone: 'on the phone', paper: 'on paper', present: 'in the practice' } as const;

/** The payer was asked about what the estimate does not have. */
export async function noteAgreement(deps: StepDeps, actor: Actor, order: string, input: z.output<typeof newAgreement>): Promise<OrderFees> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order, true);
    if (await isDone(tx, actor, order, input.key)) return;
    const visit = knownVisit(account, input.visit);
    await personName(account.work, input.person);
    const words = `Agreed ${SAID[input.how]} to pay ${moneyWords(input.amountMinor, account.currency)} for this visit`;
    await writeEntries(account, actor, role, 'noteAgreement', input.key, [{ visit, kind: 'agreement', words, amountMinor: input.amountMinor, how: input.how, person: input.person }]);
  });
  return orderFees(deps, actor, order);
}
