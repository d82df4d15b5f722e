import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { conflictOf } from '../order-screen/conflict-view.js';

/** The centre says which of its readings stands; who said so is part of the record. */
export const settleConflict = useCase('settleConflict', (work, on, input) => {
  if (!conflictOf(work, on)?.results.includes(input.keep)) throw badInput('keep', t('This is not one of the readings that disagree.'));
  return [{ type: 'conflictSettled', study: on, keep: input.keep, why: input.why, detail: { saidBy: input.saidBy } }];
});
