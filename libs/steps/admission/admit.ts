import { useCase } from '../record/use-case.js';

export const admit = useCase('admit', (_work, on, input) => [{ type: 'admitted', visit: on, weightKg: input.weightKg, bodyCondition: input.bodyCondition, fastedHours: input.fastedHours, detail: { scale: 'of 9', ...(input.medicines ? { medicines: input.medicines } : {}) } }]);
