import type { BreedList } from '#libs/contracts/screens/breeds';
import type { AgeBand } from '#libs/science/population/age-band';
import { audit } from '#libs/platform/audit/audit';
import type { StepDeps } from '../record/step-deps.js';
import type { Lead } from './scheme-screen.js';
import { setNames } from './set-names.js';

interface Told { sets: { id: string; pool: string; breed: string; ageBand: AgeBand; frozenOn: string; n: number }[]; last: BreedList['last'] }

export async function breedList(deps: StepDeps, lead: Lead): Promise<BreedList> {
  const { sets, last } = await deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewBreeds' });
    const [row] = await tx.$queryRaw<{ told: Told }[]>`SELECT app.scheme_sets(${lead.scheme}::uuid) AS told`;
    return row!.told;
  });
  return { last, sets: sets.map((set) => ({ id: set.id, ...setNames(set), n: set.n, frozenOn: set.frozenOn })) };
}
