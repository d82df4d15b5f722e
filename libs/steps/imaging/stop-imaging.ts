import { useCase } from '../record/use-case.js';

/** One touch, for anybody, without a reason: a missing view never keeps a dog asleep. */
export const stopImaging = useCase('stopImaging', (_work, on, input) => [{ type: 'imagingEnded', visit: on, how: input.woke ? 'woke' : 'stopped' }]);
