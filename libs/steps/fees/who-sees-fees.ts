import { t } from '#libs/words/spoken';
import type { Actor } from '../record/actor.js';
import { StepError } from '../record/step-error.js';

/** Money is the front desk's and the manager's. */
export function feesOnly(actor: Actor): 'desk' | 'manager' {
  const role = (['desk', 'manager'] as const).find((r) => actor.roles.includes(r));
  if (!role) throw new StepError('NOT_YOUR_ROLE', t('Fees are for the front desk and the practice manager.'));
  return role;
}
