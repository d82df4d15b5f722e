import type { Words } from '#libs/words/words';
import { moneyWords } from '../money-words.js';
import type { Account } from './open-account.js';
import { acceptedEstimate, visitAccount } from './visit-account.js';

/** What a payer is told: every line that counts, and nothing about any result. */
export interface Told {
  accession: string;
  charges: string[];
  payments: string[];
  /** Accepted, charged, paid, open: a sentence each. */
  sums: string[];
  openMinor: number;
}

export function toldOf({ work, entries, currency }: Account, t: Words): Told {
  const counts = entries.filter((e) => !e.reversed);
  const money = (minor: number) => moneyWords(minor, currency, t.language);
  const visits = [...new Set(counts.map((e) => e.visit))].map((visit) => visitAccount(work, visit, entries, currency));
  const sum = (field: 'chargedMinor' | 'paidMinor' | 'notAgreedMinor' | 'openMinor') => visits.reduce((all, v) => all + v[field], 0);
  const accepted = visits.reduce((all, v) => all + (acceptedEstimate(work, v.visit)?.amountMinor ?? 0), 0);
  return {
    accession: work.order.accession,
    charges: counts.filter((e) => e.kind === 'charge').map((e) => `${e.words}: ${money(e.amountMinor)}${e.why ? ` (${e.why})` : ''}`),
    payments: counts.filter((e) => e.kind === 'payment' || e.kind === 'refund').map((e) => t('{words}, receipt {receipt}: {money}', { words: e.words, receipt: e.receipt ?? '', money: money(e.amountMinor) })),
    sums: [
      ...(accepted > 0 ? [t('Accepted with the estimate: {money}.', { money: money(accepted) })] : []),
      t('Charged: {money}.', { money: money(sum('chargedMinor')) }),
      ...(sum('notAgreedMinor') > 0 ? [t('Of that, {money} is more than was agreed to. Please call us about it.', { money: money(sum('notAgreedMinor')) })] : []),
      t('Paid: {money}.', { money: money(sum('paidMinor')) }),
      openToPayer(sum('chargedMinor'), sum('paidMinor'), money, t),
    ],
    openMinor: sum('openMinor'),
  };
}

/** What is open, to the one who pays. */
function openToPayer(chargedMinor: number, paidMinor: number, money: (minor: number) => string, t: Words): string {
  const open = chargedMinor - paidMinor;
  if (chargedMinor === 0) return paidMinor > 0 ? t('{money} was paid beforehand; nothing is charged yet.', { money: money(paidMinor) }) : t('Nothing is charged yet.');
  if (open > 0) return t('{money} is open.', { money: money(open) });
  return open < 0 ? t('{money} more was paid than charged. We will be in touch.', { money: money(-open) }) : t('All that was charged is paid.');
}
