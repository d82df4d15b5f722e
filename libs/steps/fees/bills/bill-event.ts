import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { asDate } from '#libs/register/parse-input';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, StepError } from '../../record/step-error.js';
import type { BillEvent, BillRecord } from './bill-sql.js';
import { withdrawn } from './read-matching.js';

interface NewEvent { id: string; bill: string; line?: string; type: BillEvent['type']; words?: string | null; study?: string | null; day?: string }

export async function addEvent(tx: Tx, deps: StepDeps, actor: Actor, role: string, e: NewEvent): Promise<void> {
  const at = deps.clock.now();
  await tx.centreBillEvent.create({ data: { id: e.id, practiceId: actor.practice, billId: e.bill, lineId: e.line ?? null, type: e.type, studyId: e.study ?? null, day: e.day ? asDate(e.day) : null, words: e.words ?? null, at, by: actor.id, byName: actor.name } });
  await audit(tx, { at, by: actor.id, role, action: `centreBill.${e.type}`, practice: actor.practice, subject: e.line ?? e.bill, detail: { name: actor.name } });
}

/** The same request twice is one; a key that was used for another bill is refused. */
export async function isSaid(tx: Tx, actor: Actor, bill: string, key: string): Promise<boolean> {
  const found = await tx.centreBillEvent.findUnique({ where: { practiceId_id: { practiceId: actor.practice, id: key } }, select: { billId: true } });
  if (found && found.billId !== bill) throw badInput('key', t('This has been sent for another bill. Reload the page and enter it again.'));
  return found !== null;
}

export function standing(bill: BillRecord): void {
  if (withdrawn(bill)) throw new StepError('NOT_AT_THIS_STEP', t('This bill was withdrawn. Enter it anew if it came again.'));
}
