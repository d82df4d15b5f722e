import { useCase } from '../record/use-case.js';
import { staffNames } from '../record/person-name.js';

export const logRoom = useCase('logRoom', async (work, _on, input) => [{ type: 'roomLogged', exposure: input.exposure, people: input.people, detail: { names: await staffNames(work, input.people) } }]);
