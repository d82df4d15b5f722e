import type { ChoosingSet } from '#libs/contracts/choosing';
import type { AgeBand } from '#libs/science/population/age-band';
import { FEWEST } from '#libs/science/population/group-size';
import { readPool } from '#libs/science/population/pool';
import { publishedHeritabilities } from '#libs/science/selection/published-heritabilities';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import type { StepDeps } from '../record/step-deps.js';
import type { Lead } from './scheme-screen.js';
import { setNames } from './set-names.js';

/** A set as the database tells it to a lead. */
export interface ListedSet { id: string; pool: string; breed: string; ageBand: AgeBand; frozenOn: string; n: number }

/** The frozen sets in force, and for those that cannot be reckoned with, why. */
export async function choosingSets(deps: StepDeps, lead: Lead): Promise<ChoosingSet[]> {
  return deps.db.outside(async (tx) => {
    await audit(tx, { by: lead.id, role: 'lead', action: 'viewScheme' });
    const [row] = await tx.$queryRaw<{ told: { sets: ListedSet[] } }[]>`SELECT app.scheme_sets(${lead.scheme}::uuid) AS told`;
    return row!.told.sets.map(viewOf);
  });
}

export const viewOf = (set: ListedSet): ChoosingSet => ({ id: set.id, ...setNames(set), n: set.n, frozenOn: set.frozenOn, refused: refusal(set.pool, set.n) });

function refusal(pool: string, n: number): string | null {
  const protocol = readPool(pool)?.protocol;
  if (protocol?.value.kind !== 'number') return t('Grades are steps and no measure: there is no spread between dogs to reckon with.');
  if (n < FEWEST.forAPlace) return t('Only {n} dogs: below {forAPlace} the spread between dogs is not known well enough.', { n, forAPlace: FEWEST.forAPlace });
  return publishedHeritabilities[protocol.code] ? null : t('Nobody has published yet how much of this value is inherited.');
}
