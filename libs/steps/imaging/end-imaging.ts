import { useCase } from '../record/use-case.js';

export const endImaging = useCase('endImaging', (_work, on) => [{ type: 'imagingEnded', visit: on, how: 'done' }]);
