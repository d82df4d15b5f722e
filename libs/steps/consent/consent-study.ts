import { personName } from '../record/person-name.js';
import { useCase } from '../record/use-case.js';
import { signatureDetail } from './signature.js';
import { studyText } from './text-in-force.js';

export const consentStudy = useCase('consentStudy', async (work, on, input) => {
  const { version, centre } = studyText(work, on);
  return [
    {
      type: 'consentGiven',
      purpose: 'study',
      study: on,
      centre,
      textVersion: version,
      answer: input.answer,
      signer: input.signer,
      signerRole: input.signerRole,
      ...(input.authority ? { authority: input.authority } : {}),
      detail: signatureDetail(input, await personName(work, input.signer), work.actor.roles[0] === 'owner' ? 'by link' : 'at the practice'),
    },
  ];
});
