import { useCase } from '../record/use-case.js';

export const sendHome = useCase('sendHome', (_work, on, input) => [{ type: 'wentHome', visit: on, with: input.with }]);
