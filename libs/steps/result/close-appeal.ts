import { useCase } from '../record/use-case.js';

export const closeAppeal = useCase('closeAppeal', (_work, on, input) => [{ type: 'appealClosed', study: on, why: input.reason }]);
