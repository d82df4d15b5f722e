import { useCase } from '../record/use-case.js';

export const disownFilm = useCase('disownFilm', (_work, _on, input) => [{ type: 'exposureDisowned', exposure: input.exposure, why: input.reason }]);
