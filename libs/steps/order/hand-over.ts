import { useCase } from '../record/use-case.js';

export const handOver = useCase('handOver', (work, _on, input) => [{ type: 'handedOver', from: work.order.practice, to: input.to, ownerAgreed: input.ownerAgreed }]);
