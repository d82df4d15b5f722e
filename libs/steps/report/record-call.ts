import { useCase } from '../record/use-case.js';

export const recordCall = useCase('recordCall', (_work, on, input) => [{ type: 'ownerPhoned', study: on, reached: input.reached }]);
