import { csv } from '#libs/contracts/csv';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { orderFees } from './order-fees.js';

/** The whole account of an order, also what was reversed. */
export async function entriesAsCsv(deps: StepDeps, actor: Actor, order: string): Promise<string> {
  const { visits, currency, accession } = await orderFees(deps, actor, order);
  const rows = visits.flatMap((v) => v.entries.map((e) => [accession, v.day, e.kind, e.words, e.amountMinor / 100, currency, e.why, e.receipt, e.person, e.at, e.by, e.reversed ? `${e.reversed.why} (${e.reversed.by})` : null]));
  return csv(['Order', 'Visit', 'Kind', 'Words', 'Amount', 'Currency', 'Why', 'Receipt', 'Person', 'Written', 'By', 'Reversed'], rows);
}
