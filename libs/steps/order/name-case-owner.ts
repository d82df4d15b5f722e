import { useCase } from '../record/use-case.js';
import { staffName } from '../record/person-name.js';

export const nameCaseOwner = useCase('nameCaseOwner', async (work, _on, input) => [{ type: 'caseOwnerNamed', person: input.person, detail: { name: await staffName(work, input.person) } }]);
