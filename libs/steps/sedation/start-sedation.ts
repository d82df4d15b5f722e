import { useCase } from '../record/use-case.js';

export const startSedation = useCase('startSedation', (_work, on, input) => [{ type: 'sedationStarted', visit: on, plan: input.plan }]);
