import { useCase } from '../record/use-case.js';

export const refuseResult = useCase('refuseResult', (_work, on, input) => [{ type: 'resultRefused', study: on, result: input.result, why: input.reason }]);
