import { type Action, actions } from './actions.js';
import type { Evaluation, On, Standing } from './evaluation.js';
import type { Role } from './facts.js';
import type { HoldCode } from './hold-codes.js';

export type Refusal = HoldCode | 'NOT_AT_THIS_STEP' | 'NOT_YOUR_ROLE';
export type Decision = { allowed: true } | { allowed: false; because: Refusal[] };

/** Whether somebody in a role may do something now, and if not, all that stands against it. */
export function decide(evaluation: Evaluation, action: Action, on: On, role: Role): Decision {
  const because: Refusal[] = [];
  const standing = standingOf(evaluation, on);
  const offered = standing?.next.includes(action) ?? false;
  const holds = standing?.refused[action];
  if (actions[action].scope !== on.scope || (!offered && !holds)) because.push('NOT_AT_THIS_STEP');
  if (!actions[action].roles.includes(role)) because.push('NOT_YOUR_ROLE');
  if (holds) because.push(...holds);
  return because.length === 0 ? { allowed: true } : { allowed: false, because };
}

function standingOf(evaluation: Evaluation, on: On): Standing<string> | undefined {
  if (on.scope === 'order') return evaluation.order;
  return on.scope === 'visit' ? evaluation.visits[on.id] : evaluation.studies[on.id];
}
