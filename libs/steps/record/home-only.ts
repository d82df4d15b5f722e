import { StepError } from './step-error.js';
import type { Work } from './work.js';

/** What touches the register of dogs and people, or who sees an order, is done where the order is at home. */
export function homeOnly({ actor, order }: Work, what: string): void {
  if (actor.practice !== order.practice) throw new StepError('NOT_YOUR_ROLE', `${what} is for the practice that this order belongs to, ${order.practices[order.practice]?.name ?? 'the other one'}. Ask them.`);
}
