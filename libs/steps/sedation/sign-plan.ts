import { t } from '#libs/words/spoken';
import { randomUUID } from 'node:crypto';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { planLines } from './plan-lines.js';

/** Our own choice, no source: a plan for a weight this far from today's is asked about as a slip of the hand. */
const SLIP = 0.2;

/** Signed by the vet who is there and bound to today's weight; the arithmetic is stored as it was shown. */
export const signPlan = useCase('signPlan', (work, on, input) => {
  const today = work.facts('admitted').filter((f) => f.visit === on).at(-1);
  if (today && Math.abs(input.weightKg / today.weightKg - 1) > SLIP) throw badInput('weightKg', t('The dog weighs {weightKg} kg today, and the plan says {weightKg2} kg. Weigh again or correct the plan.', { weightKg: today.weightKg, weightKg2: input.weightKg }));
  return [{ type: 'planSigned', visit: on, plan: randomUUID(), kind: input.kind, vetPresent: input.vetPresent, weightKg: input.weightKg, detail: { lines: planLines(input.weightKg, input.drugs) } }];
});
