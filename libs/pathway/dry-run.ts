import type { Hold } from './evaluation.js';
import { evaluate } from './evaluate.js';
import type { Evaluation } from './evaluation.js';
import type { Fact } from './facts.js';
import type { Rules } from './rules.js';

const hard = ['takeView', 'admit', 'startSedation'] as const;

/**
 * The holds that proposed facts would add and that forbid imaging, admitting or sedating. Empty: nothing speaks
 * against booking, moving or changing the centre. Afterwards the same holds may still arise, for facts change.
 */
export function proposes(facts: readonly Fact[], proposed: readonly Fact[], now: string, rules: Rules): Hold[] {
  const known = new Set(holdsOf(evaluate(facts, now, rules)).map(keyOf));
  return holdsOf(evaluate([...facts, ...proposed], now, rules))
    .filter((hold) => hard.some((action) => hold.forbids.includes(action)) && !known.has(keyOf(hold)));
}

const holdsOf = ({ order, visits, studies }: Evaluation): Hold[] =>
  [order, ...Object.values(visits), ...Object.values(studies)].flatMap((thing) => thing.holds);

const keyOf = ({ code, on }: Hold): string => `${code} ${on.scope} ${on.id}`;
