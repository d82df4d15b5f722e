import { randomUUID } from 'node:crypto';
import type { z } from 'zod';
import type { CentreBill, newCentreBill } from '#libs/contracts/centre-bills';
import { audit } from '#libs/platform/audit/audit';
import type { Tx } from '#libs/platform/database/db';
import { asDate, pastDay } from '#libs/register/parse-input';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import { spokenDay } from '../../record/day-words.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, StepError } from '../../record/step-error.js';
import { ownMoney } from '../own-money.js';
import { feesOnly } from '../who-sees-fees.js';
import { BILLS, type BillRecord } from './bill-sql.js';
import { plain } from './find-study.js';
import { lockBills, oneBill } from './one-bill.js';
import { withdrawn } from './read-matching.js';

type NewBill = z.output<typeof newCentreBill>;

/** A bill with all its lines, or nothing of it. */
export async function enterBill(deps: StepDeps, actor: Actor, input: NewBill): Promise<CentreBill> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    await lockBills(tx, actor);
    if (await tx.centreBill.findUnique({ where: { practiceId_id: { practiceId: actor.practice, id: input.key } }, select: { id: true } })) return;
    await refuseWhatCannotBe(tx, deps, actor, input);
    const at = deps.clock.now();
    const { key: id, centre: centreId, number, currency } = input;
    await tx.centreBill.create({ data: { id, practiceId: actor.practice, centreId, number, currency, day: asDate(input.day), due: input.due ? asDate(input.due) : null, at, by: actor.id, byName: actor.name } });
    await tx.centreBillLine.createMany({ data: input.lines.map((line, i) => ({ id: randomUUID(), practiceId: actor.practice, billId: id, place: i + 1, ...line })) });
    await audit(tx, { at, by: actor.id, role, action: 'enterCentreBill', practice: actor.practice, subject: id, detail: { name: actor.name, lines: input.lines.length } });
  });
  return oneBill(deps, actor, input.key);
}

async function refuseWhatCannotBe(tx: Tx, deps: StepDeps, actor: Actor, input: NewBill): Promise<void> {
  const { currency, today } = await ownMoney(tx, actor, deps.clock.now());
  const centre = await tx.centre.findUnique({ where: { id: input.centre }, select: { name: true } });
  if (!centre) throw badInput('centre', t('This centre is not known. Choose one from the list.'));
  pastDay('day', input.day, today);
  if (input.due !== undefined && input.due < input.day) throw badInput('due', t('It is due before the day of the bill. Correct one of the two.'));
  if (input.currency !== currency) throw badInput('currency', t('The fees of the centres are agreed in {currency}. Ask the centre for a bill in {currency}.', { currency }));
  const bills = await tx.$queryRawUnsafe<BillRecord[]>(BILLS, actor.practice);
  const same = bills.find((b) => b.centre === input.centre && plain(b.number) === plain(input.number) && !withdrawn(b));
  if (same) throw new StepError('ALREADY_THERE', t('Bill {number} of {centre} was entered by {by}, dated {day}. Nothing was added. If that one is wrong, withdraw it first.', { number: same.number, centre: centre.name, by: same.by, day: spokenDay(same.day) }));
}
