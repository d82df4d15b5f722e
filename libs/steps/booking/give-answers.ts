import { useCase } from '../record/use-case.js';

export const giveAnswers = useCase('giveAnswers', (_work, on, input) => [{ type: 'answersGiven', visit: on, stage: input.stage, answers: input.answers, detail: { notes: input.notes } }]);
