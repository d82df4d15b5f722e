import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import type { Work } from '../record/work.js';
import { lastWeight } from './last-weight.js';

/** Our own choice, no source: a weight this far from the last one is asked about, because every dose hangs on it. */
const JUMP = 0.2;

export const admit = useCase('admit', async (work, on, input) => {
  if (!input.weighedAgain) await askAboutJump(work, input.weightKg);
  return [{ type: 'admitted', visit: on, weightKg: input.weightKg, bodyCondition: input.bodyCondition, fastedHours: input.fastedHours, detail: { scale: 'of 9', ...(input.medicines ? { medicines: input.medicines } : {}), ...(input.weighedAgain ? { weighedAgain: true } : {}) } }];
});

async function askAboutJump(work: Work, weightKg: number): Promise<void> {
  const last = await lastWeight(work);
  if (!last || Math.abs(weightKg / last.weightKg - 1) <= JUMP) return;
  const zone = work.order.rules.practices[work.actor.practice]?.zone ?? 'UTC';
  throw badInput('weightKg', t('The dog weighed {weightKg} kg on {toISOString}. Weigh again; if {weightKg2} kg is right, say that you weighed again.', { weightKg: last.weightKg, toISOString: spokenDay(localDay(last.at.toISOString(), zone)), weightKg2: weightKg }));
}
