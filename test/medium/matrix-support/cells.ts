import { actionNames, type ActionName } from '#libs/contracts/actions/all';
import { actions, type Action } from '#libs/pathway/actions';
import { decide, type Decision, type Refusal } from '#libs/pathway/decide';
import type { Role } from '#libs/pathway/facts';
import { writesOwnersWord } from '#libs/steps/consent/owners-word';
import { whereDone } from '#libs/steps/record/where-done';
import { ownersDoors, readersDoors, sentPackage, type Door } from './outsiders.js';
import { first, type State } from './states.js';

export const staff = ['desk', 'nurse', 'radiographer', 'vet', 'manager'] as const;
export type Staff = (typeof staff)[number];

/** One action where an order stands: for whom it is, and what the pathway has against it. */
export interface Cell {
  action: ActionName;
  on: string;
  step: string;
  right: Staff[];
  wrong: Staff[];
  because: Refusal[];
}

const subjectOf = ({ road }: State, action: ActionName): { id: string; step: string } => {
  const { order, visits, studies } = road.evaluation;
  return { order: { id: road.order, step: order.step }, visit: visits[road.visit]!, study: studies[first(road)]! }[actions[action as Action].scope];
};

/** Every action of the pathway, in a state; what an owner says is written down by those who have the owner in front of them. */
export function cellsOf(state: State): Cell[] {
  return actionNames.map((action) => {
    const { id, step } = subjectOf(state, action);
    const { scope, roles } = actions[action as Action];
    const right = staff.filter((role) => (roles as readonly Role[]).includes(role) || writesOwnersWord(action, [role]));
    const answer = decide(state.road.evaluation, action as Action, { scope, id }, roles[0]!);
    const place = whereDone(action, state.road.evaluation, state.road.house.id);
    if (place && place !== state.road.driver.scheme.houses[state.practice].id) return { action, on: id, step, right: [], wrong: [...staff], because: ['NOT_YOUR_ROLE'] };
    return { action, on: id, step, right, wrong: staff.filter((role) => !right.includes(role)), because: reasons(action, answer) };
  });
}

/** What a centre says is kept whenever it comes, and held for a vet to look at. */
const reasons = (action: ActionName, answer: Decision): Refusal[] => (answer.allowed || action === 'enterResult' ? [] : answer.because);

/** What is alike in this is asked about once: for those whose it is, and for all others. */
export const nameOf = ({ road, practice }: State, { action, step, because }: Cell): string => [action, step, practice, because.length === 0 && road.evaluation.order.silent ? 'silent' : '', ...because].join(' ');
export const nameForOthers = ({ practice }: State, { action, step }: Cell): string => ['not', action, step, practice].join(' ');

export interface OutsidersCell { by: 'owner' | 'reader'; door: Door; sealed?: string; on: string; step: string; because: Refusal[]; name: string }

/** What can be asked without an account: behind the owner's link, and behind a reader's where something was sent. */
export function outsidersCells(state: State): OutsidersCell[] {
  const { road } = state;
  const sealed = sentPackage(road);
  const cell = (by: 'owner' | 'reader') => (door: Door): OutsidersCell => {
    const { id, step } = subjectOf(state, door.action);
    const answer = decide(road.evaluation, door.action as Action, { scope: actions[door.action as Action].scope, id }, by);
    const because = reasons(door.action, answer);
    return { by, door, ...(sealed ? { sealed } : {}), on: id, step, because, name: [by, door.action, step, road.evaluation.order.silent ? 'silent' : '', ...because].join(' ') };
  };
  return state.practice === 'weirside' ? [...ownersDoors(road).map(cell('owner')), ...readersDoors(road).map(cell('reader'))] : [];
}
