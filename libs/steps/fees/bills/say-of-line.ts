import type { CentreBill, SaidOfLine } from '#libs/contracts/centre-bills';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput, notFound, StepError } from '../../record/step-error.js';
import { feesOnly } from '../who-sees-fees.js';
import { addEvent, isSaid, standing } from './bill-event.js';
import { lineWords, studyWords } from './line-words.js';
import { billAmong, oneBill } from './one-bill.js';
import { saidOf, type Matching } from './read-matching.js';

/** A person says what a line is for, or that it is not owed; and takes that back with another entry. */
export async function sayOfLine(deps: StepDeps, actor: Actor, bill: string, line: string, input: SaidOfLine): Promise<CentreBill> {
  const role = feesOnly(actor);
  await deps.db.practice(actor.practice, async (tx) => {
    const found = await billAmong(tx, deps, actor, bill, true);
    const of = found.bill.lines.find((l) => l.id === line);
    if (!of) throw notFound();
    if (await isSaid(tx, actor, bill, input.key)) return;
    standing(found.bill);
    if (input.says === 'undone') {
      if (!saidOf(found.bill, line)) throw new StepError('NOT_AT_THIS_STEP', t('Nobody has said anything about this line that could be taken back. A line that was matched by itself can be disputed.'));
    } else if (input.says === 'matched') {
      const m = found.matching.matched.get(line)!;
      if (m.state === 'matched') throw new StepError('ALREADY_THERE', t('This line is for {of}.', { of: lineWords(of, m, found.matching.bills, found.matching.currency) }));
      free(found.matching, found.bill.centre, input.study);
    }
    await addEvent(tx, deps, actor, role, { bill, line, id: input.key, type: input.says, words: input.words ?? null, study: input.says === 'matched' ? input.study : null });
  });
  return oneBill(deps, actor, bill);
}

/** Sent to this centre, and in none of its bills. */
function free({ studies, matched, bills }: Matching, centre: string, study: string): void {
  const wanted = studies.find((s) => s.study === study && s.centre === centre && s.sentOn !== null);
  if (!wanted) throw badInput('study', t('This study was not sent to this centre by you. Choose one from the list.'));
  const other = [...matched].find(([, m]) => m.state === 'matched' && m.of.study === study && m.of.centre === centre)?.[0];
  const bill = bills.find((b) => b.lines.some((l) => l.id === other));
  if (bill) throw badInput('study', t('{wanted} is billed already: bill {number}, line {place}. A study is billed once.', { wanted: studyWords(wanted), number: bill.number, place: bill.lines.find((l) => l.id === other)!.place }));
}
