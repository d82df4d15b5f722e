import type { BreedList } from '#libs/contracts/screens/breeds';
import { audit } from '#libs/platform/audit/audit';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { StepDeps } from '../record/step-deps.js';
import { breedList } from './breed-list.js';
import type { Lead } from './scheme-screen.js';

/** The worker counts everything anew and freezes what may be frozen; the lead’s name and the day stay with it. */
export async function askFreeze(deps: StepDeps, lead: Lead): Promise<BreedList> {
  await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'freezeSets' });
    await addToOutbox(tx, 'freeze-sets', { lead: lead.id }, { dedupe: `freeze:${lead.scheme}` });
  });
  return breedList(deps, lead);
}
