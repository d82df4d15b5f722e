import { useCase } from '../record/use-case.js';

export const assignFilm = useCase('assignFilm', (_work, _on, input) => [{ type: 'exposureAssigned', exposure: input.exposure, serves: input.serves }]);
