import { useCase } from '../record/use-case.js';

export const endStudy = useCase('endStudy', (_work, on, input) => [{ type: 'studyEnded', study: on, why: input.reason, ...(input.note ? { detail: { note: input.note } } : {}) }]);
