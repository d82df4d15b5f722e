import { useCase } from '../record/use-case.js';

export const clearCause = useCase('clearCause', (_work, on, input) => [{ type: 'causeCleared', study: on, cause: input.cause }]);
