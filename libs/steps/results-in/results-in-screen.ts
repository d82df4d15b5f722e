import type { ResultsInScreen } from '#libs/contracts/results-in';
import type { WithSecrets } from '#libs/platform/secrets/with-secrets';
import type { StepDeps } from '../record/step-deps.js';
import { keyCentres, readKeys } from './centre-keys.js';
import { leftReadings } from './left-readings.js';
import { brings, centresOf, type Onlooker } from './onlooker.js';

export const MESSAGES = '/api/results-in/messages';

export async function resultsInScreen(deps: StepDeps & WithSecrets, who: Onlooker, page = 1): Promise<ResultsInScreen> {
  const left = await leftReadings(deps, who, page);
  const keys = await keyCentres(deps, who);
  const named = ({ id, name }: { id: string; name: string }) => ({ id, name });
  return {
    centres: (await centresOf(deps, who)).map(named),
    uploads: brings(who),
    keys: keys && keys.length > 0 ? { centres: keys.map(named), rows: await readKeys(deps, who), address: `${deps.publicUrl}${MESSAGES}` } : null,
    left,
  };
}
