import { questions, questionWords, type Question } from '#libs/contracts/common';

export interface Asked { sex: string; neutered: boolean }

/** A bitch that was neutered lately may still nurse pups. */
function applies(question: Question, { sex, neutered }: Asked): boolean {
  if (question === 'season' || question === 'pregnant') return sex === 'female' && !neutered;
  return question !== 'nursing' || sex === 'female';
}

/** What is asked of this dog's owner; season, pregnancy and nursing only where they can be. */
export const questionsFor = (dog: Asked): { question: Question; words: (typeof questionWords)[Question] }[] => questions.filter((q) => applies(q, dog)).map((question) => ({ question, words: questionWords[question] }));

/** What was not asked because it cannot be is written down as no, so that no answer is missing. */
export const answersNotAsked = (dog: Asked): Partial<Record<Question, 'no'>> => Object.fromEntries(questions.filter((q) => !applies(q, dog)).map((q) => [q, 'no' as const]));
