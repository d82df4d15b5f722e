import { useCase } from '../record/use-case.js';
import { mustWait } from './must-wait.js';

export const acceptResult = useCase('acceptResult', (work, on, input) => {
  mustWait(work, on, input.result);
  return [{ type: 'resultAccepted', study: on, result: input.result }];
});
