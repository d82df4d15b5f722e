import { useCase } from '../record/use-case.js';

export const explainResult = useCase('explainResult', (_work, on, input) => [{ type: 'resultExplained', study: on, result: input.result, why: input.why }]);
