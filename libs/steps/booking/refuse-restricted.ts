import type { Tx } from '#libs/platform/database/db';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';

/** Nothing new begins for a dog of somebody whose data are kept and not used, nor in the name of such a person. */
export async function refuseRestricted(tx: Tx, dog: string, people: readonly string[] = []): Promise<void> {
  const [restricted] = await tx.$queryRaw<{ name: string }[]>`
    SELECT p.name FROM person p
    WHERE (p.id = ANY(${[...people]}::uuid[]) OR p.id IN (SELECT r.person_id FROM dog_role r WHERE r.dog_id = ${dog}::uuid AND r.valid_until IS NULL))
      AND app.is_restricted(p.id) ORDER BY p.name LIMIT 1`;
  if (restricted) throw new StepError('HELD', t('{restricted} has asked that their data be kept and not used, so no visit is booked for them. If they want this visit, the practice manager lifts the restriction under Data requests first.', { restricted: restricted.name }));
}
