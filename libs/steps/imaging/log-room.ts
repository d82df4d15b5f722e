import { staffNames } from '../record/person-name.js';
import { useCase } from '../record/use-case.js';
import { filmTaken } from './film-of.js';

/** Who stood in the room is asked of every exposure, also of one that was taken out: it was made all the same. */
export const logRoom = useCase('logRoom', async (work, _on, input) => [
  { type: 'roomLogged', exposure: filmTaken(work, input.exposure).exposure, people: input.people, detail: { names: await staffNames(work, input.people) } },
]);
