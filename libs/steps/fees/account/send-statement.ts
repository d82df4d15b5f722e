import type { OrderFees } from '#libs/contracts/fees';
import { asLanguage } from '#libs/words/languages';
import { wordsIn, type Words } from '#libs/words/words';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import { say } from '../../messages/say.js';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { StepError } from '../../record/step-error.js';
import type { Work } from '../../record/work.js';
import { feesOnly } from '../who-sees-fees.js';
import { openAccount } from './open-account.js';
import { orderFees } from './order-fees.js';
import { silentWords } from './silent-words.js';
import { toldOf } from './told.js';

/**
 * Tells the payer by mail what was charged and paid. It is frozen when it is asked for; whether it may go is asked
 * again at the moment of sending, because a dog may have died in between.
 */
export async function sendStatement(deps: StepDeps, actor: Actor, order: string, key: string): Promise<OrderFees> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const account = await openAccount(tx, deps, actor, order, true);
    const { work, entries } = account;
    if (await tx.feeStatement.findUnique({ where: { practiceId_id: { practiceId: actor.practice, id: key } }, select: { id: true } })) return;
    const silent = silentWords(work);
    if (silent) throw new StepError('HELD', silent);
    const payer = await payerByMail(work);
    if (!entries.some((e) => e.kind === 'charge' && !e.reversed)) throw new StepError('NOT_AT_THIS_STEP', t('Nothing is charged yet, so there is nothing to tell.'));
    const last = await tx.feeEntry.aggregate({ where: { orderId: order, practiceId: actor.practice }, _max: { seq: true } });
    const earlier = await tx.feeStatement.findFirst({ where: { orderId: order, practiceId: actor.practice, personId: payer.id, upTo: last._max.seq! }, select: { byName: true } });
    if (earlier) throw new StepError('ALREADY_THERE', t('{byName} has sent this to {payer}, and nothing has changed since. What became of that mail stands below.', { byName: earlier.byName, payer: payer.name }));
    const dog = await tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
    await tx.feeStatement.create({ data: { id: key, practiceId: actor.practice, orderId: order, personId: payer.id, upTo: last._max.seq!, told: { ...toldOf(account, payer.t), dog: dog.callName }, at: work.now, by: actor.id, byName: actor.name } });
    await say(tx, { once: `statement:${actor.practice}:${key}`, kind: 'bill', template: 'statement', order, practice: actor.practice, to: { person: payer.id, name: payer.name, email: payer.email }, data: { dog: dog.callName, statement: key } });
    await audit(tx, { at: work.now, by: actor.id, role, action: 'sendStatement', practice: actor.practice, order, subject: key, detail: { name: actor.name } });
  });
  return orderFees(deps, actor, order);
}

async function payerByMail({ tx, facts }: Work): Promise<{ id: string; name: string; email: string; t: Words }> {
  const payer = facts('payerNamed').at(-1)?.payer;
  if (!payer) throw new StepError('HELD', t('Nobody is named to pay. Name the payer on the order’s page.'));
  const person = await tx.person.findUnique({ where: { id: payer }, select: { id: true, name: true, email: true, language: true } });
  const post = [...facts('orderOpened'), ...facts('addresseesConfirmed')].at(-1)?.addressees.find((a) => a.person === payer && a.channel === 'post');
  if (!person?.email || post) throw new StepError('HELD', t('{person} gets no mail{which}. Print this page and hand it over.', { person: person?.name ?? t('The payer'), which: post ? t(', but post') : t(': no address is known') }));
  return { id: person.id, name: person.name, email: person.email, t: wordsIn(asLanguage(person.language)) };
}
