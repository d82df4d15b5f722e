import type { Bag } from './bag.js';
import { isAfter } from './effective.js';
import type { FactOf } from './facts.js';

type Arrived = FactOf<'resultArrived'>;

export interface Results {
  /** Not a copy, not refused, withdrawn, superseded or accepted: somebody has to look. */
  waiting: Arrived[];
  /** What another one says as well. */
  copies: Arrived[];
  /** The result that counts: the one accepted last. */
  accepted: { result: Arrived; by: FactOf<'resultAccepted'> } | undefined;
  secondAccepted: boolean;
  conflict: Arrived[];
  withdrawn: { result: Arrived; by: FactOf<'resultWithdrawn'> }[];
}

export function pictureResults(facts: Bag): Results {
  const out = new Set<string>([
    ...facts.all('resultRefused').map((fact) => fact.result),
    ...facts.all('resultWithdrawn').map((fact) => fact.result),
  ]);
  const standing = facts.all('resultArrived').filter((result) => !out.has(result.result));
  const acceptances = facts.all('resultAccepted').filter((fact) => !out.has(fact.result));
  const acceptedIds = new Set(acceptances.map((fact) => fact.result));
  const by = acceptances.at(-1);
  const accepted = by && standing.find((result) => result.result === by.result);

  const copies = standing.filter((result) => !acceptedIds.has(result.result) && isCopy(facts, result, standing, acceptedIds));
  const originals = standing.filter((result) => !copies.includes(result));
  const current = originals.filter((result) => !isSuperseded(result, originals) && !isSettledAway(facts, result));
  const waiting = current.filter((result) => !acceptedIds.has(result.result));
  const compared = [...waiting, ...(accepted && current.includes(accepted) ? [accepted] : [])];
  return {
    waiting,
    copies,
    accepted: by && accepted ? { result: accepted, by } : undefined,
    secondAccepted: acceptances.some((fact) => standing.some((one) => one.result === fact.result && one.reading === 'second')),
    conflict: waiting.filter((result) => compared.some((other) => disagree(facts, result, other))),
    withdrawn: facts.all('resultWithdrawn').flatMap((fact) => {
      const result = facts.all('resultArrived').find((one) => one.result === fact.result);
      return result ? [{ result, by: fact }] : [];
    }),
  };
}

/** A result by post has the values that two people keyed alike; until then those it was entered with. */
export function valuesOf(facts: Bag, result: Arrived): string {
  return agreedKeying(facts, result) ?? result.valuesHash;
}

export function agreedKeying(facts: Bag, result: Arrived): string | undefined {
  const keyed = facts.all('resultKeyed').filter((fact) => fact.result === result.result);
  return keyed.find((one) => keyed.some((two) => two.by !== one.by && two.valuesHash === one.valuesHash))?.valuesHash;
}

const trust = { page: 0, file: 0, webhook: 0, post: 1, phone: 2 } as const;

/** Equal values are one result; of equal ones the best written, then the first, is the original. What says again what the centre has amended since is none. */
function isCopy(facts: Bag, result: Arrived, standing: Arrived[], accepted: Set<string>): boolean {
  const rank = (one: Arrived): number => (accepted.has(one.result) ? -1 : trust[one.channel]);
  return standing.some((other) =>
    other !== result && other.reading === result.reading && valuesOf(facts, other) === valuesOf(facts, result)
    && (rank(other) < rank(result) || (rank(other) === rank(result) && isAfter(result, other)))
    && !standing.some((amended) => amends(amended, other) && isAfter(result, amended)));
}

const amends = (later: Arrived, earlier: Arrived): boolean => later.ref === earlier.ref && later.reading === earlier.reading && isAfter(later, earlier);

/** The centre's own later version of the same result. */
const isSuperseded = (result: Arrived, all: Arrived[]): boolean =>
  all.some((other) => amends(other, result));

const isSettledAway = (facts: Bag, result: Arrived): boolean =>
  facts.all('conflictSettled').some((settled) => {
    const kept = facts.all('resultArrived').find((one) => one.result === settled.keep);
    return kept?.reading === result.reading && settled.keep !== result.result && isAfter(settled, result);
  });

const disagree = (facts: Bag, a: Arrived, b: Arrived): boolean =>
  a !== b && a.reading === b.reading && a.ref !== b.ref && valuesOf(facts, a) !== valuesOf(facts, b);
