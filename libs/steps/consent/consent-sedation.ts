import { t } from '#libs/words/spoken';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { signatureDetail } from './signature.js';
import { textInForce } from './text-in-force.js';
import { whoSigns } from './who-signs.js';

/** A yes to the sedation carries the wishes for an emergency; without them the dog is not put to sleep. */
export const consentSedation = useCase('consentSedation', async (work, on, input) => {
  if (input.answer === 'yes' && !input.emergency) throw badInput('emergency', t('Please say what to do in an emergency, up to which amount, and whom to call.'));
  const currency = await currencyOf(work);
  const { signed, detail } = await whoSigns(work, input, 'sedation');
  return [
    {
      type: 'consentGiven',
      purpose: 'sedation',
      visit: on,
      textVersion: textInForce(work, 'sedationText'),
      answer: input.answer,
      ...signed,
      ...(input.emergency ? { emergency: { ...input.emergency, currency } } : {}),
      detail: signatureDetail(input, detail, work.actor.roles[0] === 'owner' ? 'by link' : 'at the practice'),
    },
  ];
});

async function currencyOf({ tx, order }: Parameters<Parameters<typeof useCase<'consentSedation'>>[1]>[0]): Promise<string> {
  const practice = await tx.practice.findUnique({ where: { id: order.practice }, select: { prices: true } });
  return (practice?.prices as { currency?: string } | undefined)?.currency ?? '';
}
