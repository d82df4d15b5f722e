import { REFERRAL_LETTER_TEMPLATE_VERSION, type ReferralLetterSnapshot } from '#libs/documents/referral-letter';
import { questions, questionWords } from '#libs/contracts/common';
import { isOpenStudy } from '#libs/pathway/steps';
import { findProtocol } from '#libs/science/protocols/catalogue';
import type { Work } from '../record/work.js';
import { dogOnPaper, moment, practiceOnPaper } from '../report/on-paper.js';

/** What a colleague needs to decide: which dog, which pictures, what the owner has said of its health, and until when. */
export async function referralSnapshot(work: Work, to: { name: string; place: string }, expires: string): Promise<ReferralLetterSnapshot> {
  const answers = work.facts('answersGiven').reduce<Record<string, string>>((said, f) => ({ ...said, ...f.answers }), {});
  return {
    templateVersion: REFERRAL_LETTER_TEMPLATE_VERSION,
    paper: 'A4',
    lang: 'en',
    issuedAt: moment(work),
    practice: practiceOnPaper(work),
    to: { name: to.name, place: to.place },
    orderNumber: work.order.accession,
    dog: await dogOnPaper(work),
    studies: Object.values(work.evaluation.studies).filter((s) => isOpenStudy(s.step)).map((s) => {
      const protocol = findProtocol(s.protocol, s.version);
      return { title: protocol?.name ?? s.protocol, version: s.version, views: protocol?.views.filter((v) => v.required).map((v) => v.label) ?? [], centre: work.order.centres[s.centre]?.name ?? '' };
    }),
    health: questions.flatMap((q) => (answers[q] ? [[questionWords[q], answers[q] === 'unknown' ? 'not known' : answers[q]] as [string, string]] : [])),
    expires,
    contact: { name: work.actor.name, phone: practiceOnPaper(work).phone },
  };
}
