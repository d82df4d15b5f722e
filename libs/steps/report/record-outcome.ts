import { useCase } from '../record/use-case.js';

/** For letters that went by post or by hand: what became of them. */
export const recordOutcome = useCase('recordOutcome', (_work, on, input) => [{ type: 'letterOutcome', study: on, letter: input.letter, to: input.to, outcome: input.outcome }]);
