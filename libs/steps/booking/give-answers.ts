import { useCase } from '../record/use-case.js';
import { answersNotAsked } from './questions-for.js';

export const giveAnswers = useCase('giveAnswers', async ({ tx, order }, on, input) => {
  const dog = await tx.dog.findUniqueOrThrow({ where: { id: order.dog }, select: { sex: true, neutered: true } });
  return [{ type: 'answersGiven', visit: on, stage: input.stage, answers: { ...answersNotAsked(dog), ...input.answers }, detail: { notes: input.notes } }];
});
