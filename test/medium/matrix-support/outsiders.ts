import type { ActionName } from '#libs/contracts/actions/all';
import { questions } from '#libs/contracts/common';
import { factsOf, type Road } from '#seed/roads/road';
import { bodies } from './bodies.js';
import { first } from './states.js';

/** A page's own way to an action, for whoever has no account. */
export interface Door { action: ActionName; path: string; body: object }

const signed = (road: Road) => ({ typedName: road.dog.person.name });

/** All that an owner can do behind the emailed link. */
export const ownersDoors = (road: Road): Door[] => {
  const { result } = bodies.askAppeal(road, 'weirside');
  return [
    { action: 'giveAnswers', path: 'answers', body: { visit: road.visit, answers: Object.fromEntries(questions.map((q) => [q, 'no'])) } },
    { action: 'acceptEstimate', path: 'estimate', body: { visit: road.visit, totalMinor: bodies.acceptEstimate(road, 'weirside').totalMinor } },
    { action: 'consentSedation', path: 'consents', body: { ...signed(road), visit: road.visit, sedation: { answer: 'yes', emergency: bodies.consentSedation(road, 'weirside').emergency } } },
    { action: 'consentStudy', path: 'consents', body: { ...signed(road), studies: [{ study: first(road), answer: 'yes' }] } },
    { action: 'answerStatistics', path: 'consents', body: { ...signed(road), statistics: 'yes' } },
    { action: 'withdrawSedation', path: 'withdraw', body: { purpose: 'sedation', subject: road.visit } },
    { action: 'withdrawStudy', path: 'withdraw', body: { purpose: 'study', subject: first(road) } },
    { action: 'agreeTransfer', path: 'transfer', body: {} },
    { action: 'chooseLetterTime', path: 'letter-time', body: { anyTime: true } },
    { action: 'askAppeal', path: 'appeal', body: { study: first(road), result } },
  ];
};

/** All that a reader can do with a package that was sent. */
export const readersDoors = (road: Road): Door[] => {
  const sealed = sentPackage(road);
  const { joints } = bodies.enterResult(road, 'weirside');
  return sealed ? [
    { action: 'acknowledge', path: `${sealed}/acknowledge`, body: {} },
    { action: 'rejectFilms', path: `${sealed}/reject`, body: bodies.rejectFilms(road, 'weirside') },
    { action: 'enterResult', path: `${sealed}/result`, body: { joints, signedBy: 'Ilka Moor', ref: 'K-78' } },
  ] : [];
};

export const sentPackage = (road: Road): string | undefined => factsOf(road, 'packageSent').find((f) => f.study === first(road))?.package;
