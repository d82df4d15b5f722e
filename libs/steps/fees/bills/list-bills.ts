import type { z } from 'zod';
import type { billLineList, billList, unbilledList, BillLineRow, BillRow, UnbilledRow } from '#libs/contracts/centre-bills';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { spokenMoney } from '../money-words.js';
import { feesOnly } from '../who-sees-fees.js';
import { billedOf, lineView } from './line-words.js';
import { keyOf, type Matched } from './match-lines.js';
import { paidOn, readMatching, withdrawn, type Matching } from './read-matching.js';

const PAGE = 50;

async function look(deps: StepDeps, actor: Actor, action: string): Promise<Matching> {
  const role = feesOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    await audit(tx, { by: actor.id, role, action, practice: actor.practice });
    return readMatching(tx, deps, actor);
  });
}

const paged = <R>(all: R[], page: number, currency: string, perPage = PAGE): { currency: string; rows: R[]; more: boolean } => ({ currency, rows: all.slice((page - 1) * perPage, page * perPage), more: all.length > page * perPage });

/** The newest first. */
export async function listBills(deps: StepDeps, actor: Actor, page: number, perPage = PAGE): Promise<z.infer<typeof billList>> {
  const matching = await look(deps, actor, 'listCentreBills');
  const rows = matching.bills.map((bill): BillRow => {
    const states = bill.lines.map((l) => matching.matched.get(l.id)?.state);
    const [paid, gone] = [paidOn(bill), withdrawn(bill) !== undefined];
    return {
      id: bill.id, centre: bill.centreName, number: bill.number, day: bill.day, due: bill.due, lines: bill.lines.length, unmatched: states.filter((s) => s === 'unmatched').length, disputed: states.filter((s) => s === 'disputed').length,
      sumMinor: bill.lines.reduce((sum, l) => sum + l.amountMinor, 0), paid, withdrawn: gone, overdue: !paid && !gone && bill.due !== null && bill.due < matching.today,
    };
  });
  return paged(rows.reverse(), page, matching.currency, perPage);
}

/** Lines of the bills that stand: those that fit nothing, those that are disputed, or all. */
export async function listBillLines(deps: StepDeps, actor: Actor, { show, page }: { show: 'unmatched' | 'disputed' | 'all'; page: number }, perPage = PAGE): Promise<z.infer<typeof billLineList>> {
  const matching = await look(deps, actor, 'listCentreBillLines');
  const lines = matching.bills.filter((b) => !withdrawn(b)).reverse().flatMap((b) => b.lines.map((l): BillLineRow => ({ ...lineView(l, matching), bill: b.id, number: b.number, centre: b.centreName })));
  return paged(lines.filter((l) => show === 'all' || l.state === show), page, matching.currency, perPage);
}

/** What a centre has read and not billed: a line with another amount, or one that is disputed, bills nothing. */
export async function listUnbilled(deps: StepDeps, actor: Actor, page: number, perPage = PAGE): Promise<z.infer<typeof unbilledList>> {
  const matching = await look(deps, actor, 'listUnbilled');
  const { studies, matched, currency } = matching;
  const of = (fits: (m: Matched) => boolean) => new Set([...matched.values()].flatMap((m) => (m.of && fits(m) ? [keyOf(m.of.centre, m.of.study)] : [])));
  const [billed, disputed, other] = [of((m) => m.state === 'matched'), of((m) => m.state === 'disputed'), of((m) => m.state === 'unmatched' && m.why === 'otherAmount')];
  const rows = studies.flatMap((s): UnbilledRow[] => {
    const key = keyOf(s.centre, s.study);
    if (!s.sentOn || !s.readOn || billed.has(key)) return [];
    const says = disputed.has(key) ? t('A line for it is disputed.') : other.has(key) ? t('A line for it has another amount.') : t('No bill yet. Expected: {feeMinor}.', { feeMinor: spokenMoney(s.feeMinor, currency) });
    return [{ ...billedOf(s), centre: s.centreName, sentOn: s.sentOn, readOn: s.readOn, feeMinor: s.feeMinor, says }];
  });
  return paged(rows.sort((a, b) => a.readOn.localeCompare(b.readOn)), page, currency, perPage);
}
