import { localDay } from '#libs/pathway/zones';
import type { StepDeps } from '../record/step-deps.js';
import { freezeSets } from './freeze-sets.js';
import { rebuildStatistics } from './rebuild-statistics.js';

/** By a scheme lead at any time; by the clock once in a calendar year, asked every day so that no year is missed. Counted anew first. */
export async function freezeJob(deps: StepDeps, { lead }: { lead?: string | undefined }): Promise<void> {
  if (!lead && !(await isDue(deps))) return;
  await rebuildStatistics(deps);
  await freezeSets(deps, lead ? await nameOf(deps, lead) : 'the program, as every year');
}

const nameOf = (deps: StepDeps, lead: string): Promise<string> => deps.db.system('say who asked', async (tx) => (await tx.staff.findUniqueOrThrow({ where: { id: lead }, select: { name: true } })).name);

async function isDue(deps: StepDeps): Promise<boolean> {
  return deps.db.system('see whether sets are due', async (tx) => {
    const scheme = await tx.scheme.findFirst({ select: { zone: true } });
    if (!scheme) return false;
    const year = localDay(deps.clock.now().toISOString(), scheme.zone).slice(0, 4);
    return (await tx.referenceFreeze.count({ where: { day: { gte: new Date(`${year}-01-01`) } } })) === 0;
  });
}
