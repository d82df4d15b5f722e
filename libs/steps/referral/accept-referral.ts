import { localDay } from '#libs/pathway/zones';
import { t } from '#libs/words/spoken';
import { spokenDay } from '../record/day-words.js';
import { StepError } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { openReferral } from './open-referral.js';
import { tellPractice } from './tell-practice.js';

/** Only the practice that was asked says yes, and in time: the owner agreed to that practice and until that day. */
export const acceptReferral = useCase('acceptReferral', async (work) => {
  const { order, now, actor } = work;
  const offer = openReferral(work);
  if (actor.practice !== offer.to) throw new StepError('NOT_YOUR_ROLE', t('The practice that was asked accepts. You can take the referral back.'));
  if (localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC') > offer.expires) throw new StepError('HELD', t('This referral was open until {expires}. Ask {practice} to offer it again.', { expires: spokenDay(offer.expires), practice: order.practices[order.practice]?.name ?? 'the other practice' }));
  await tellPractice(work, order.practice, { once: `referral:${offer.referral}:answer`, template: 'referralAnswered', data: { answer: 'accepted', why: '' } });
  return [{ type: 'referralAnswered', referral: offer.referral, answer: 'accepted' }];
});
