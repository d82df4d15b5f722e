import { useCase } from '../record/use-case.js';

export const askAppeal = useCase('askAppeal', (_work, on, input) => [{ type: 'appealAsked', study: on, result: input.result, asker: input.asker }]);
