import { useCase } from '../record/use-case.js';

export const examine = useCase('examine', (_work, on, input) => [{ type: 'examined', visit: on, statusClass: input.statusClass as 1 | 2 | 3 | 4 | 5, ...(input.reason ? { reason: input.reason } : {}), ...(input.findings ? { detail: { findings: input.findings } } : {}) }]);
