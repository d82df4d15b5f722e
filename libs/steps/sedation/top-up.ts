import { useCase } from '../record/use-case.js';

/** More sedation is a second start, under a plan of its own. */
export const topUp = useCase('topUp', (_work, on, input) => [{ type: 'sedationStarted', visit: on, plan: input.plan }]);
