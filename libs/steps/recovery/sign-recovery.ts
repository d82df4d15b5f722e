import { useCase } from '../record/use-case.js';

export const signRecovery = useCase('signRecovery', (_work, on, input) => [{ type: 'recoverySigned', visit: on, signs: input.signs }]);
