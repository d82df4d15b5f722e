import { useCase } from '../record/use-case.js';
import { signatureDetail } from './signature.js';
import { textInForce } from './text-in-force.js';
import { whoSigns } from './who-signs.js';

export const consentSendAll = useCase('consentSendAll', async (work, on, input) => {
  const { signed, detail } = await whoSigns(work, input, 'sendAll');
  return [
    {
      type: 'consentGiven',
      purpose: 'sendAll',
      study: on,
      textVersion: textInForce(work, 'sendAllText'),
      answer: input.answer,
      ...signed,
      detail: signatureDetail(input, detail, work.actor.roles[0] === 'owner' ? 'by link' : 'at the practice'),
    },
  ];
});
