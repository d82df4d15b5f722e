import type { FeeEntry, VisitFees } from '#libs/contracts/fees';
import { t } from '#libs/words/spoken';
import type { Work } from '../../record/work.js';
import { spokenMoney } from '../money-words.js';
import type { EntryRow } from './account-sql.js';
import { openWords } from './open-words.js';

type Facts = Pick<Work, 'facts' | 'evaluation' | 'order'>;
const text = (value: unknown): string => (typeof value === 'string' ? value : '');
const sumOf = (entries: EntryRow[], kind: EntryRow['kind']): number => entries.filter((e) => e.kind === kind && !e.reversed).reduce((sum, e) => sum + e.amountMinor, 0);

export function acceptedEstimate({ facts }: Pick<Work, 'facts'>, visit: string) {
  const accepted = facts('estimateAccepted').filter((f) => f.visit === visit).at(-1);
  return accepted && { ...accepted, lines: (accepted.detail?.lines as { words: string; amountMinor: number }[] | undefined) ?? [] };
}

/** One visit's account, read off what was agreed to and what was written down. */
export function visitAccount(work: Facts, visit: string, rows: EntryRow[], currency: string): VisitFees {
  const standing = work.evaluation.visits[visit]!;
  const entries = rows.filter((e) => e.visit === visit);
  const accepted = acceptedEstimate(work, visit);
  const agreement = entries.filter((e) => e.kind === 'agreement' && !e.reversed).at(-1);
  const agreedMinor = Math.max(accepted?.amountMinor ?? 0, agreement?.amountMinor ?? 0);
  const chargedMinor = sumOf(entries, 'charge');
  const paidMinor = sumOf(entries, 'payment') - sumOf(entries, 'refund');
  const notAgreedMinor = Math.max(0, chargedMinor - agreedMinor);
  const charged = (line: number) => entries.some((e) => e.kind === 'charge' && !e.reversed && e.estimateId === accepted?.id && e.estimateLine === line);
  return {
    visit, day: standing.day ?? null, step: standing.step, where: standing.where ? (work.order.practices[standing.where]?.name ?? null) : null,
    estimate: accepted
      ? { amountMinor: accepted.amountMinor, currency: accepted.currency, by: text(accepted.detail?.name), how: accepted.how, at: accepted.at, lines: accepted.lines.map((l, line) => ({ line, ...l, charged: charged(line) })) }
      : null,
    entries: entries.map((e) => entryView(e, standing.day)),
    agreedMinor, chargedMinor, paidMinor, notAgreedMinor, openMinor: chargedMinor - paidMinor,
    says: [openWords(chargedMinor, paidMinor, currency), ...(notAgreedMinor > 0 ? notAgreedWords(work, visit, { notAgreedMinor, agreedMinor, currency }) : [])],
  };
}

function entryView(e: EntryRow, visitDay: string | undefined): FeeEntry {
  const { id, kind, words, amountMinor, why, day, how, person, receipt, at, by, reversed } = e;
  return { id, kind, words, amountMinor, why, day, how, person, receipt, at, by, reversed, prepaid: kind === 'payment' && day !== null && visitDay !== undefined && day < visitDay };
}

/** The limit was said for an emergency while the dog sleeps; whether it covers a charge, people judge. */
function notAgreedWords(work: Facts, visit: string, { notAgreedMinor, agreedMinor, currency }: { notAgreedMinor: number; agreedMinor: number; currency: string }): string[] {
  const agreed = agreedMinor > 0 ? t('The payer has agreed to {agreedMinor}', { agreedMinor: spokenMoney(agreedMinor, currency) }) : t('The payer has agreed to nothing yet');
  const consent = work.facts('consentGiven').filter((f) => f.purpose === 'sedation' && f.visit === visit && f.answer === 'yes').at(-1);
  const limit = consent?.emergency?.limitMinor;
  return [
    t('{agreed}: {notAgreedMinor} is charged that nobody has agreed to. Ask, and write down the answer.', { agreed, notAgreedMinor: spokenMoney(notAgreedMinor, currency) }),
    ...(limit ? [t('For an emergency in sedation {detail} allowed {limit} without being asked. What is not agreed to is {which}.', { detail: text(consent.detail?.name) || 'the owner', limit: spokenMoney(limit, consent.emergency?.currency ?? currency), which: notAgreedMinor > limit ? 'more than that' : t('within that, if this was an emergency') })] : []),
  ];
}
