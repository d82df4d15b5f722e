import { useCase } from '../record/use-case.js';

export const liftSilence = useCase('liftSilence', (_work, _on, input) => [{ type: 'silenceLifted', why: input.why }]);
