import type { ActionName } from '#libs/contracts/actions/all';
import type { Evaluation } from '#libs/pathway/evaluation';
import { t } from '#libs/words/spoken';
import { StepError } from './step-error.js';
import type { Work } from './work.js';

/** What touches the register of dogs and people, prices, or who sees an order, is done where the order is at home. */
const AT_HOME: ReadonlyMap<string, string> = new Map<ActionName, string>([
  ['acceptEstimate', 'Accepting the estimate'], ['erasePerson', 'Erasing a person'], ['handOver', 'Handing over'], ['offerReferral', 'Referring'], ['recordTransfer', 'Writing down a sale'],
]);

/** The one practice that does this; undefined where any does that sees the order. Whoever asked another practice cannot answer for it. */
export function whereDone(action: string, { order }: Evaluation, home: string): string | undefined {
  if (action === 'acceptReferral') return order.holds.find((h) => h.code === 'REFERRAL_OPEN')?.detail?.to;
  return AT_HOME.has(action) ? home : undefined;
}

export function refuseElsewhere({ actor, order }: Work, action: string): void {
  const what = AT_HOME.get(action);
  if (!what || actor.practice === order.practice) return;
  throw new StepError('NOT_YOUR_ROLE', t('{what} is for the practice that this order belongs to, {practice}. Ask them.', { what: t.known(what), practice: order.practices[order.practice]?.name ?? t('the other practice') }));
}
