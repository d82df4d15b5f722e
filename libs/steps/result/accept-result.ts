import { useCase } from '../record/use-case.js';

export const acceptResult = useCase('acceptResult', (_work, on, input) => [{ type: 'resultAccepted', study: on, result: input.result }]);
