import type { Joint } from '#libs/contracts/common';
import type { FactOf } from '#libs/pathway/facts';
import type { Work } from '../record/work.js';

type Facts = Work['facts'];

/** What a result by post was keyed as by two people alike; null until then. Other results have what they came with. */
export function agreedJoints(facts: Facts, arrived: FactOf<'resultArrived'>): Joint[] | null {
  if (arrived.channel !== 'post') return arrived.joints;
  const keyed = keyings(facts, arrived);
  const agreed = keyed.find((one) => keyed.some((two) => two.by !== one.by && two.valuesHash === one.valuesHash));
  if (!agreed) return null;
  return (agreed.detail?.joints as Joint[] | undefined) ?? arrived.joints;
}

/** The values that letters, papers and comparisons take. */
export const jointsOf = (facts: Facts, arrived: FactOf<'resultArrived'>): Joint[] => agreedJoints(facts, arrived) ?? arrived.joints;

export const keyings = (facts: Facts, { study, result }: FactOf<'resultArrived'>): FactOf<'resultKeyed'>[] =>
  facts('resultKeyed').filter((f) => f.study === study && f.result === result);
