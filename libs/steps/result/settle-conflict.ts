import { useCase } from '../record/use-case.js';

export const settleConflict = useCase('settleConflict', (_work, on, input) => [{ type: 'conflictSettled', study: on, keep: input.keep, why: input.why }]);
