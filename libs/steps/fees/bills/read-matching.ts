import type { Tx } from '#libs/platform/database/db';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { ownMoney, type OwnMoney } from '../own-money.js';
import { BILLS, STUDIES, type BillEvent, type BillRecord, type StudyRow } from './bill-sql.js';
import type { StudyAt } from './find-study.js';
import { matchLines, type LineToMatch, type Matched } from './match-lines.js';
import { studiesAt } from './studies-at.js';

/** All bills of a practice, all that it sent, and which line is for what: read off what was entered and said, each time. */
export interface Matching extends OwnMoney {
  bills: BillRecord[];
  studies: StudyAt[];
  matched: Map<string, Matched>;
}

/** With `more`, as if a bill had these lines too. */
export async function readMatching(tx: Tx, deps: StepDeps, actor: Actor, more: LineToMatch[] = []): Promise<Matching> {
  const money = await ownMoney(tx, actor, deps.clock.now());
  const bills = await tx.$queryRawUnsafe<BillRecord[]>(BILLS, actor.practice);
  const rows = await tx.$queryRawUnsafe<StudyRow[]>(STUDIES, actor.practice, more.map((l) => l.reference));
  const centres = new Map((await tx.centre.findMany({ select: { id: true, name: true, feeMinor: true } })).map((c) => [c.id, c]));
  const studies = rows.flatMap((row) => studiesAt(row, centres, money.zone));
  return { ...money, bills, studies, matched: matchLines([...bills.filter((b) => !withdrawn(b)).flatMap(linesOf), ...more], studies) };
}

export const withdrawn = (bill: BillRecord): BillEvent | undefined => bill.events.find((e) => e.type === 'withdrawn');

/** The day on which it was paid, unless that was taken back. */
export function paidOn(bill: BillRecord): string | null {
  const last = bill.events.findLast((e) => e.type === 'paid' || e.type === 'unpaid');
  return last?.type === 'paid' ? last.day : null;
}

/** What a person has said about a line, unless it was taken back. */
export function saidOf(bill: BillRecord, line: string): LineToMatch['said'] {
  const last = bill.events.findLast((e) => e.line === line);
  if (last?.type === 'matched') return { says: 'matched', study: last.study! };
  return last?.type === 'disputed' ? { says: 'disputed', words: last.words! } : null;
}

const linesOf = (bill: BillRecord): LineToMatch[] => bill.lines.map(({ id, reference, study, amountMinor }) => ({ id, centre: bill.centre, reference, study, amountMinor, said: saidOf(bill, id) }));
