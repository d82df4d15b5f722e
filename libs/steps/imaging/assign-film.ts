import { useCase } from '../record/use-case.js';
import { filmOf, refuseServing } from './film-of.js';

export const assignFilm = useCase('assignFilm', (work, _on, input) => {
  const film = filmOf(work, input.exposure);
  const serves = [...new Set(input.serves)];
  refuseServing(work, film.view, serves);
  return [{ type: 'exposureAssigned', exposure: film.exposure, serves }];
});
