import { useCase } from '../record/use-case.js';

export const settleIdentity = useCase('settleIdentity', (_work, on, input) => [{ type: 'identitySettled', visit: on, why: input.why }]);
