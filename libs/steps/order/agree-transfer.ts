import { useCase } from '../record/use-case.js';

export const agreeTransfer = useCase('agreeTransfer', (_work, _on, input) => [{ type: 'transferAgreed', party: input.party }]);
