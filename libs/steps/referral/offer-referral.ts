import { randomUUID } from 'node:crypto';
import { localDay } from '#libs/pathway/zones';
import { nameAtDesk } from '#libs/science/protocols/catalogue';
import { said } from '#libs/words/said';
import { t } from '#libs/words/spoken';
import { dayWords } from '../record/day-words.js';
import { badInput } from '../record/step-error.js';
import { useCase } from '../record/use-case.js';
import { storeDocument } from '../report/store-document.js';
import { letterLanguage } from './letter-language.js';
import { referralSnapshot } from './referral-snapshot.js';
import { tellPractice } from './tell-practice.js';

/** From here on both practices see the order, and nobody else does. */
export const offerReferral = useCase('offerReferral', async (work, _on, input) => {
  const { tx, order, evaluation, now } = work;
  if (!input.ownerAgreed) throw badInput('ownerAgreed', t('Ask the owner first: the other practice would see the whole order.'));
  if (input.expires < localDay(now.toISOString(), order.rules.practices[order.practice]?.zone ?? 'UTC')) throw badInput('expires', t('This day has passed. Leave the other practice time to answer.'));
  const [to] = await tx.$queryRaw<{ name: string; place: string }[]>`SELECT name, place FROM app.practice_directory() WHERE id = ${input.to}::uuid AND id <> ${order.practice}::uuid`;
  if (!to) throw badInput('to', t('This practice does not take part in the scheme.'));
  await tx.$executeRaw`SELECT app.share_order(${order.id}::uuid, ${input.to}::uuid, 'referral')`;
  const referral = randomUUID();
  const studies = Object.values(evaluation.studies).map(nameAtDesk);
  const letter = await storeDocument(work, { kind: 'referralLetter', named: said('Referral to {practice}', { practice: to.name }), snapshot: await referralSnapshot(work, { ...to, expires: input.expires, language: await letterLanguage(tx, input.to) }), subject: referral, forOwner: false });
  await tellPractice(work, input.to, { once: `referral:${referral}`, template: 'referral', data: { studies, expires: dayWords(input.expires) }, documents: [letter] });
  return [{ type: 'referralOffered', referral, to: input.to, expires: input.expires, ownerAgreed: true, detail: { name: to.name } }];
});
