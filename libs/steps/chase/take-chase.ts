import { useCase } from '../record/use-case.js';

export const takeChase = useCase('takeChase', (_work, on, input) => [{ type: 'chaseTaken', study: on, person: input.person, lookAgain: input.lookAgain }]);
