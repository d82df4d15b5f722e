import type { ActionInput, ActionName } from '#libs/contracts/actions/all';
import type { Stated, Work } from './work.js';

/** What an action states. It may look, write rows of its own and refuse; it never changes a fact. */
export type UseCase<A extends ActionName> = (work: Work, on: string, input: ActionInput<A>) => Stated[] | Promise<Stated[]>;

/** One file each in the folders of the steps; the name is the pathway's. */
export const useCase = <A extends ActionName>(_action: A, run: UseCase<A>): UseCase<A> => run;
