import { useCase } from '../record/use-case.js';

export const cancelOrder = useCase('cancelOrder', (_work, _on, input) => [{ type: 'orderCancelled', why: input.why }]);
