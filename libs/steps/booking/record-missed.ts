import { useCase } from '../record/use-case.js';

export const recordMissed = useCase('recordMissed', (_work, on) => [{ type: 'visitMissed', visit: on }]);
