import { useCase } from '../record/use-case.js';

export const tellCentre = useCase('tellCentre', (_work, on) => [{ type: 'centreTold', study: on }]);
