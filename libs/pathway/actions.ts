import { orderActions } from './order-actions.js';
import { studyActions } from './study-actions.js';
import { visitActions } from './visit-actions.js';
import type { FactType, Role } from './facts.js';

export interface ActionRow<Situation> {
  roles: readonly Role[];
  /** The fact that it writes. */
  writes: FactType;
  offered: (situation: Situation) => boolean;
}

export type OrderAction = keyof typeof orderActions;
export type VisitAction = keyof typeof visitActions;
export type StudyAction = keyof typeof studyActions;
export type Action = OrderAction | VisitAction | StudyAction;

export interface ActionInfo { scope: 'order' | 'visit' | 'study'; roles: readonly Role[]; writes: FactType }

type Rows = Record<string, { roles: readonly Role[]; writes: FactType }>;
const infos = (scope: ActionInfo['scope'], rows: Rows): [string, ActionInfo][] =>
  Object.entries(rows).map(([action, { roles, writes }]) => [action, { scope, roles, writes }]);

/** What each action is about, who may do it and which fact it writes. */
export const actions = Object.fromEntries([
  ...infos('order', orderActions), ...infos('visit', visitActions), ...infos('study', studyActions),
]) as Record<Action, ActionInfo>;
