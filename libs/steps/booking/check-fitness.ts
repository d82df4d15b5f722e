import { useCase } from '../record/use-case.js';
import type { Stated, Work } from '../record/work.js';
import { findFitness } from './find-fitness.js';

/** Asks the register again whether operator, equipment and interval fit, and writes down the answer. */
export const checkFitness = useCase('checkFitness', (work, on) => fitnessOf(work, on));

export async function fitnessOf(work: Work, visit: string): Promise<Stated[]> {
  const standing = work.evaluation.visits[visit];
  const booked = work.facts('visitBooked').filter((f) => f.visit === visit).at(-1);
  if (!standing || !booked) return [];
  const stated: Stated[] = [];
  for (const id of standing.studies) {
    const study = work.evaluation.studies[id];
    if (!study) continue;
    const problems = await findFitness(work.tx, { practice: booked.where, dog: work.order.dog, order: work.order.id, protocol: study.protocol, version: study.version, day: booked.day, operator: booked.operator });
    stated.push({ type: 'fitnessChecked', visit, study: id, problems });
  }
  return stated;
}
