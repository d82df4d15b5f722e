import type { CentreBill } from '#libs/contracts/centre-bills';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import { shortDay, spokenDay } from '../../record/day-words.js';
import type { StepDeps } from '../../record/step-deps.js';
import { notFound } from '../../record/step-error.js';
import { feesOnly } from '../who-sees-fees.js';
import type { BillEvent, BillRecord } from './bill-sql.js';
import { billedOf, lineView, studyWords } from './line-words.js';
import { keyOf } from './match-lines.js';
import { paidOn, readMatching, withdrawn, type Matching } from './read-matching.js';

export async function oneBill(deps: StepDeps, actor: Actor, id: string): Promise<CentreBill> {
  const role = feesOnly(actor);
  return deps.db.practice(actor.practice, async (tx) => {
    const { matching, bill } = await billAmong(tx, deps, actor, id);
    await audit(tx, { by: actor.id, role, action: 'viewCentreBill', practice: actor.practice, subject: id });
    return billView(bill, matching);
  });
}

/** With `lock` nobody else says anything about a bill of this practice until the transaction ends: no study is billed twice at once. */
export async function billAmong(tx: Tx, deps: StepDeps, actor: Actor, id: string, lock = false): Promise<{ matching: Matching; bill: BillRecord }> {
  if (lock) await lockBills(tx, actor);
  const matching = await readMatching(tx, deps, actor);
  const bill = matching.bills.find((b) => b.id === id);
  if (!bill) throw notFound();
  return { matching, bill };
}

export async function lockBills(tx: Tx, actor: Actor): Promise<void> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`centre bills ${actor.practice}`}, 0))`;
}

function billView(bill: BillRecord, matching: Matching): CentreBill {
  const { currency, zone, today, studies, matched } = matching;
  const lines = bill.lines.map((line) => lineView(line, matching));
  const gone = withdrawn(bill);
  const paid = paidOn(bill);
  const taken = new Set([...matched.values()].flatMap((m) => (m.state === 'matched' ? [keyOf(m.of.centre, m.of.study)] : [])));
  return {
    id: bill.id, centre: { id: bill.centre, name: bill.centreName }, number: bill.number, day: bill.day, due: bill.due, currency: bill.currency || currency, zone, today, by: bill.by, at: bill.at, lines,
    sumMinor: sum(lines), matchedMinor: sum(lines.filter((l) => l.state === 'matched')), paid, withdrawn: gone?.words ?? null,
    says: gone ? t('Withdrawn. Its lines count nowhere.') : paid ? t('Paid on {paid}.', { paid: spokenDay(paid) }) : bill.due && bill.due < today ? t('Not paid, and was due on {due}.', { due: spokenDay(bill.due) }) : t('Not paid yet.'),
    events: bill.events.map((e) => ({ place: bill.lines.find((l) => l.id === e.line)?.place ?? null, type: e.type, words: eventWords(e, matching), by: e.by, at: e.at })).reverse(),
    mayBe: studies.flatMap((s) => (s.centre === bill.centre && s.sentOn && !taken.has(keyOf(s.centre, s.study)) ? [{ ...billedOf(s), sentOn: s.sentOn }] : [])),
  };
}

const sum = (lines: { amountMinor: number }[]): number => lines.reduce((all, l) => all + l.amountMinor, 0);

function eventWords(e: BillEvent, { studies }: Matching): string {
  const of = studies.find((s) => s.study === e.study);
  return [of && studyWords(of), e.day && shortDay(e.day), e.words].filter(Boolean).join('. ');
}
