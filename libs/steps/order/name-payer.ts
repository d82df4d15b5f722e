import { useCase } from '../record/use-case.js';
import { personName } from '../record/person-name.js';

export const namePayer = useCase('namePayer', async (work, _on, input) => [{ type: 'payerNamed', payer: input.payer, detail: { name: await personName(work, input.payer) } }]);
