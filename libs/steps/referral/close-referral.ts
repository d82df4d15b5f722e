import { addToOutbox } from '#libs/platform/database/outbox';
import { t } from '#libs/words/spoken';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { openReferral } from './open-referral.js';
import { tellPractice } from './tell-practice.js';

/** Who was asked declines, who asked takes back; the other side is told why, and the order is shared no longer. */
export const closeReferral = useCase('closeReferral', async (work, _on, input) => {
  const { tx, order, actor } = work;
  const offer = openReferral(work);
  const asked = actor.practice === offer.to;
  if (asked !== (input.answer === 'declined')) throw new StepError('NOT_YOUR_ROLE', asked ? t('Your practice was asked: you decline. The practice that asked takes back.') : t('Your practice has asked: you take back. The practice that was asked declines.'));
  await tellPractice(work, asked ? order.practice : offer.to, { once: `referral:${offer.referral}:answer`, template: 'referralAnswered', data: { answer: asked ? 'declined' : 'taken back', why: input.why } });
  await addToOutbox(tx, 'end-sharing', { order: order.id, practice: offer.to }, { dedupe: offer.referral });
  return [{ type: 'referralAnswered', referral: offer.referral, answer: input.answer, why: input.why }];
});
