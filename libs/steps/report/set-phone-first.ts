import { useCase } from '../record/use-case.js';

export const setPhoneFirst = useCase('setPhoneFirst', (_work, on, input) => [{ type: 'phoneFirstSet', study: on, until: input.until }]);
