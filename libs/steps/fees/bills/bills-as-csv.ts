import { csv } from '#libs/contracts/csv';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { listBillLines, listBills, listUnbilled } from './list-bills.js';

const ALL = Number.MAX_SAFE_INTEGER;

export async function billsAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const { rows, currency } = await listBills(deps, actor, 1, ALL);
  return csv(['Bill', 'Centre', 'Dated', 'Due', 'Lines', 'Fit nothing', 'Disputed', 'Sum', 'Currency', 'Paid', 'Withdrawn', 'Overdue'], rows.map((r) => [r.number, r.centre, r.day, r.due, r.lines, r.unmatched, r.disputed, (r.sumMinor / 100).toFixed(2), currency, r.paid ?? null, r.withdrawn ? 'yes' : 'no', r.overdue ? 'yes' : 'no']));
}

export async function billLinesAsCsv(deps: StepDeps, actor: Actor, show: 'unmatched' | 'disputed' | 'all'): Promise<string> {
  const { rows, currency } = await listBillLines(deps, actor, { show, page: 1 }, ALL);
  return csv(['Centre', 'Bill', 'Line', 'Reference', 'Study', 'Amount', 'Currency', 'State', 'Order', 'Dog', 'Says'], rows.map((r) => [r.centre, r.number, r.place, r.reference, r.study, (r.amountMinor / 100).toFixed(2), currency, r.state, r.of?.accession ?? null, r.of?.dog ?? null, r.says]));
}

export async function unbilledAsCsv(deps: StepDeps, actor: Actor): Promise<string> {
  const { rows, currency } = await listUnbilled(deps, actor, 1, ALL);
  return csv(['Centre', 'Order', 'Dog', 'Study', 'Sent', 'Read', 'Fee', 'Currency', 'Says'], rows.map((r) => [r.centre, r.accession, r.dog, r.name, r.sentOn, r.readOn, (r.feeMinor / 100).toFixed(2), currency, r.says]));
}
