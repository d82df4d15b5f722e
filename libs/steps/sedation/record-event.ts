import { useCase } from '../record/use-case.js';

export const recordEvent = useCase('recordEvent', (_work, on, input) => [{ type: 'eventRecorded', visit: on, what: input.what }]);
