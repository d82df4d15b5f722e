import { useCase } from '../record/use-case.js';

export const decideAfterDeath = useCase('decideAfterDeath', (_work, on, input) => [{ type: 'afterDeathDecided', study: on, goOn: input.goOn }]);
