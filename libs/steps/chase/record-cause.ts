import { useCase } from '../record/use-case.js';

export const recordCause = useCase('recordCause', (_work, on, input) => [{ type: 'causeFound', study: on, cause: input.cause }]);
