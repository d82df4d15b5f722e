import { useCase } from '../record/use-case.js';
import { textInForce } from './text-in-force.js';
import { whoSigns } from './who-signs.js';

/** Yes or no to the breed's statistics; moves no road. */
export const answerStatistics = useCase('answerStatistics', async (work, _on, input) => {
  const { signed, detail } = await whoSigns(work, { signer: input.signer, signerRole: 'owner' }, 'statistics');
  return [{ type: 'consentGiven', purpose: 'statistics', textVersion: textInForce(work, 'statisticsText'), answer: input.answer, ...signed, detail }];
});
