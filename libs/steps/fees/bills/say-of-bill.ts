import type { CentreBill, SaidOfBill } from '#libs/contracts/centre-bills';
import type { Tx } from '#libs/platform/database/db';
import { pastDay } from '#libs/register/parse-input';
import { t } from '#libs/words/spoken';
import { append } from '../../record/append.js';
import type { Actor } from '../../record/actor.js';
import { lockOrder } from '../../record/order-record.js';
import type { StepDeps } from '../../record/step-deps.js';
import { StepError } from '../../record/step-error.js';
import { workOn } from '../../record/work.js';
import { feesOnly } from '../who-sees-fees.js';
import { addEvent, isSaid, standing } from './bill-event.js';
import type { BillRecord } from './bill-sql.js';
import { studyWords } from './line-words.js';
import { billAmong, oneBill } from './one-bill.js';
import { paidOn, type Matching } from './read-matching.js';

/** Paid, not paid after all, or entered wrongly. */
export async function sayOfBill(deps: StepDeps, actor: Actor, id: string, input: SaidOfBill): Promise<CentreBill> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const { matching, bill } = await billAmong(tx, deps, actor, id, true);
    if (await isSaid(tx, actor, id, input.key)) return;
    standing(bill);
    const paid = paidOn(bill);
    if (input.says === 'paid') {
      pastDay('day', input.day, matching.today);
      if (paid) throw new StepError('ALREADY_THERE', t('This bill is marked as paid already. Take that back first, if the day is wrong.'));
      const ended = await endUnpaid(tx, deps, actor, role, bill, matching);
      await addEvent(tx, deps, actor, role, { bill: id, id: input.key, type: 'paid', day: input.day, words: ended.length > 0 ? `No longer “not paid”: ${ended.join('; ')}` : null });
      return;
    }
    if (input.says === 'unpaid' && !paid) throw new StepError('NOT_AT_THIS_STEP', t('This bill is not marked as paid.'));
    if (input.says === 'withdrawn' && paid) throw new StepError('NOT_AT_THIS_STEP', t('This bill is marked as paid. Take that back first.'));
    await addEvent(tx, deps, actor, role, { bill: id, id: input.key, type: input.says, words: input.words });
  });
  return oneBill(deps, actor, id);
}

/** A centre that waits for payment of what this bill is for waits no longer. Orders are locked in the order of their ids. */
async function endUnpaid(tx: Tx, deps: StepDeps, actor: Actor, role: 'desk' | 'manager', bill: BillRecord, { matched }: Matching): Promise<string[]> {
  const paid = bill.lines.flatMap((l) => { const m = matched.get(l.id); return m?.state === 'matched' ? [m.of] : []; });
  const ended: string[] = [];
  for (const id of [...new Set(paid.map((s) => s.order))].sort()) {
    const order = await lockOrder(tx, id);
    if (!order) continue;
    const work = workOn(tx, deps.clock.now(), actor, order, deps.publicUrl);
    const studies = paid.filter((s) => s.order === id && work.evaluation.studies[s.study]?.centre === s.centre && work.evaluation.studies[s.study]?.holds.some((h) => h.code === 'UNPAID'));
    if (studies.length === 0) continue;
    await append(work, studies.map((s) => ({ type: 'causeCleared', study: s.study, cause: 'unpaid' })), { action: 'clearCause', role });
    ended.push(...studies.map(studyWords));
  }
  return ended;
}
