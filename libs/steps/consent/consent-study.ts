import { useCase } from '../record/use-case.js';
import { signatureDetail } from './signature.js';
import { studyText } from './text-in-force.js';
import { whoSigns } from './who-signs.js';

export const consentStudy = useCase('consentStudy', async (work, on, input) => {
  const { version, centre } = studyText(work, on);
  const { signed, detail } = await whoSigns(work, input, 'study');
  return [
    {
      type: 'consentGiven',
      purpose: 'study',
      study: on,
      centre,
      textVersion: version,
      answer: input.answer,
      ...signed,
      detail: signatureDetail(input, detail, work.actor.roles[0] === 'owner' ? 'by link' : 'at the practice'),
    },
  ];
});
