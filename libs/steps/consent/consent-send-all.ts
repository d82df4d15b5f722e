import { personName } from '../record/person-name.js';
import { useCase } from '../record/use-case.js';
import { signatureDetail } from './signature.js';
import { textInForce } from './text-in-force.js';

export const consentSendAll = useCase('consentSendAll', async (work, on, input) => {

  return [
    {
      type: 'consentGiven',
      purpose: 'sendAll',
      study: on,

      textVersion: textInForce(work, 'sendAllText'),
      answer: input.answer,
      signer: input.signer,
      signerRole: input.signerRole,
      ...(input.authority ? { authority: input.authority } : {}),
      detail: signatureDetail(input, await personName(work, input.signer), work.actor.roles[0] === 'owner' ? 'by link' : 'at the practice'),
    },
  ];
});
