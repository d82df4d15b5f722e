import type { z } from 'zod';
import type { BillPreview, billPreviewAsked } from '#libs/contracts/centre-bills';
import { t } from '#libs/words/spoken';
import type { Actor } from '../../record/actor.js';
import type { StepDeps } from '../../record/step-deps.js';
import { badInput } from '../../record/step-error.js';
import { feesOnly } from '../who-sees-fees.js';
import { lineWords } from './line-words.js';
import { readCsv } from './read-csv.js';
import { readMatching } from './read-matching.js';

/** What the rows of a file would be as a bill of this centre. Nothing is stored. */
export async function previewBill(deps: StepDeps, actor: Actor, { centre, csv }: z.output<typeof billPreviewAsked>): Promise<BillPreview> {
  feesOnly(actor);
  const { rows, errors } = readCsv(csv);
  return deps.db.practice(actor.practice, async (tx) => {
    if (!(await tx.centre.findUnique({ where: { id: centre }, select: { id: true } }))) throw badInput('centre', t('This centre is not known. Choose one from the list.'));
    const { matched, bills, currency } = await readMatching(tx, deps, actor, rows.map((r) => ({ id: `row ${r.row}`, centre, said: null, ...r })).map(({ row: _, ...line }) => line));
    return { errors, currency, sumMinor: rows.reduce((sum, r) => sum + r.amountMinor, 0), rows: rows.map((r) => { const m = matched.get(`row ${r.row}`)!; return { ...r, state: m.state, says: lineWords(r, m, bills, currency) }; }) };
  });
}
