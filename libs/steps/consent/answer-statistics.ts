import { personName } from '../record/person-name.js';
import { useCase } from '../record/use-case.js';
import { textInForce } from './text-in-force.js';

/** Yes or no to the breed's statistics; moves no road. */
export const answerStatistics = useCase('answerStatistics', async (work, _on, input) => [
  { type: 'consentGiven', purpose: 'statistics', textVersion: textInForce(work, 'statisticsText'), answer: input.answer, signer: input.signer, signerRole: 'owner', detail: { name: await personName(work, input.signer) } },
]);
