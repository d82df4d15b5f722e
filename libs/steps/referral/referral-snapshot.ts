import { REFERRAL_LETTER_TEMPLATE_VERSION, type ReferralLetterSnapshot } from '#libs/documents/referral-letter';
import { questions, questionWords } from '#libs/contracts/common';
import { isOpenStudy } from '#libs/pathway/steps';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Language } from '#libs/words/languages';
import { wordsOnPaper } from '#libs/words/words';
import type { Work } from '../record/work.js';
import { dogOnPaper, moment, practiceOnPaper } from '../report/on-paper.js';

interface Asked { name: string; place: string; expires: string; language: Language }

/** What a colleague needs to decide: which dog, which pictures, what the owner has said of its health, and until when. */
export async function referralSnapshot(work: Work, { name, place, expires, language }: Asked): Promise<ReferralLetterSnapshot> {
  const t = wordsOnPaper(language);
  const answers = work.facts('answersGiven').reduce<Record<string, string>>((said, f) => ({ ...said, ...f.answers }), {});
  const practice = practiceOnPaper(work);
  return {
    templateVersion: REFERRAL_LETTER_TEMPLATE_VERSION,
    paper: 'A4',
    lang: language,
    issuedAt: moment(work),
    practice,
    to: { name, place },
    orderNumber: work.order.accession,
    dog: await dogOnPaper(work),
    studies: Object.values(work.evaluation.studies).filter((s) => isOpenStudy(s.step)).map((s) => {
      const protocol = findProtocol(s.protocol, s.version);
      return { title: t.known(protocol?.name ?? s.protocol), version: s.version, views: protocol?.views.filter((v) => v.required).map((v) => t.known(v.label)) ?? [], centre: work.order.centres[s.centre]?.name ?? '' };
    }),
    health: questions.flatMap((q) => (answers[q] ? [[t(questionWords[q]), answers[q] === 'unknown' ? t('not known') : t.known(answers[q])] as [string, string]] : [])),
    expires,
    contact: { name: work.actor.name, phone: practice.phone },
  };
}
