import { useCase } from '../record/use-case.js';

export const turnAway = useCase('turnAway', (_work, on, input) => [{ type: 'turnedAway', visit: on, why: input.reason, ...(input.note ? { detail: { note: input.note } } : {}) }]);
