import type { BirthsSaid, BreedPicture } from '#libs/contracts/screens/breeds';
import { localDay } from '#libs/pathway/zones';
import { audit } from '#libs/platform/audit/audit';
import { t } from '#libs/words/spoken';
import type { StepDeps } from '../record/step-deps.js';
import { StepError, badInput } from '../record/step-error.js';
import { birthsOf } from './births-of.js';
import { breedPicture } from './breed-picture.js';
import type { Lead } from './scheme-screen.js';

/** How many pups of a set's breed were born in a year: appended, the last word holds and the earlier ones stay. */
export async function sayBirths(deps: StepDeps, lead: Lead, set: string, { year, born, source }: BirthsSaid): Promise<BreedPicture> {
  const at = deps.clock.now();
  await deps.db.outside(async (tx) => {
    const [row] = await tx.$queryRaw<{ breed: string | null; zone: string }[]>`SELECT app.scheme_set(${lead.scheme}::uuid, ${set}::uuid)->>'breed' AS breed, s.zone FROM scheme s WHERE s.id = ${lead.scheme}::uuid`;
    if (!row?.breed) throw new StepError('NOT_FOUND', t('This set is not in force any more. Open the breed from the list of breeds; nothing was written down.'));
    if (year > Number(localDay(at.toISOString(), row.zone).slice(0, 4))) throw badInput('year', t('{year} is still to come, so nobody knows its births.', { year }));
    const last = (await birthsOf(tx, lead, row.breed)).find((said) => said.year === year);
    if (born === null && (last?.born ?? null) === null) throw badInput('year', t('No number of {year} is written down, so there is none to take back.', { year }));
    if (last && last.born === born && last.source === source) throw new StepError('ALREADY_THERE', t('This is written down of {year} already.', { year }));
    await tx.$executeRaw`SELECT app.say_births(${lead.id}::uuid, ${row.breed}, ${year}::int, ${born}::int, ${source}, ${at})`;
    await audit(tx, { by: lead.id, role: 'lead', action: 'sayBirths', subject: set, detail: { breed: row.breed, year, born } });
  });
  return breedPicture(deps, lead, set);
}
