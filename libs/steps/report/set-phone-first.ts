import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { today } from './on-paper.js';

export const setPhoneFirst = useCase('setPhoneFirst', (work, on, input) => {
  if (input.until < today(work)) throw badInput('until', 'This day has passed. Name a day by which you will call.');
  return [{ type: 'phoneFirstSet', study: on, until: input.until }];
});
