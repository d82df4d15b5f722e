import type { Evaluation, Hold } from './evaluation.js';
import { evaluate } from './evaluate.js';
import type { Fact } from './facts.js';
import type { HoldCode } from './hold-codes.js';
import type { Rules } from './rules.js';

/**
 * What makes a day, a place or a dog unfit. Other holds that forbid imaging or sedating, such as a signature still to
 * come, are what a booking is there to bring about.
 */
const unfit: ReadonlySet<HoldCode> = new Set<HoldCode>([
  'TOO_YOUNG', 'NOT_FIT', 'POSTPONED', 'PREGNANT', 'REST_DAYS', 'RULES_UNKNOWN', 'NOTHING_TO_IMAGE', 'PROTOCOL_CHANGED', 'HARM',
]);

/**
 * The holds that proposed facts would add and that speak against booking, moving or changing the centre; empty when
 * nothing does. Afterwards the same holds may still arise, for facts change.
 */
export function proposes(facts: readonly Fact[], proposed: readonly Fact[], now: string, rules: Rules): Hold[] {
  const known = new Set(holdsOf(evaluate(facts, now, rules)).map(keyOf));
  return holdsOf(evaluate([...facts, ...proposed], now, rules))
    .filter((hold) => unfit.has(hold.code) && !known.has(keyOf(hold)));
}

const holdsOf = ({ order, visits, studies }: Evaluation): Hold[] =>
  [order, ...Object.values(visits), ...Object.values(studies)].flatMap((thing) => thing.holds);

const keyOf = ({ code, on, detail }: Hold): string => JSON.stringify([code, on, detail]);
