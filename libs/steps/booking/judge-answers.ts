import { useCase } from '../record/use-case.js';

export const judgeAnswers = useCase('judgeAnswers', (_work, on, input) => [{ type: 'answersJudged', visit: on, go: input.go, why: input.why, ...(input.until ? { until: input.until } : {}) }]);
