import { useCase } from '../record/use-case.js';

export const withdrawSedation = useCase('withdrawSedation', (_work, on, input) => [{ type: 'consentWithdrawn', purpose: 'sedation', visit: on, ...(input.why ? { why: input.why } : {}) }]);
