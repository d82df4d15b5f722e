import type { Action } from './actions.js';
import type { StudyStep, VisitStep } from './steps.js';

export interface Move<Step> { from: readonly Step[]; by: readonly Action[]; to: Step }

/** Which action takes a visit where. Ways that nothing but a late or slipped fact can open are left out. */
export const visitMoves: readonly Move<VisitStep>[] = [
  { from: ['wanted'], by: ['book'], to: 'booked' },
  { from: ['booked'], by: ['admit'], to: 'admitted' },
  { from: ['admitted'], by: ['startSedation'], to: 'sedated' },
  { from: ['sedated'], by: ['endImaging', 'stopImaging'], to: 'imaged' },
  { from: ['imaged'], by: ['signRecovery'], to: 'recovered' },
  { from: ['recovered', 'admitted'], by: ['sendHome'], to: 'home' },
  { from: ['wanted', 'booked'], by: ['cancelVisit', 'cancelOrder'], to: 'cancelled' },
  { from: ['booked'], by: ['recordMissed'], to: 'missed' },
  { from: ['booked', 'admitted'], by: ['turnAway'], to: 'turnedAway' },
  { from: ['wanted', 'booked', 'admitted', 'sedated', 'imaged', 'recovered'], by: ['recordDeath'], to: 'died' },
];

const unsent = ['rejected', 'asked', 'imaging', 'ready', 'sealed'] as const;
const beforeLetter = [...unsent, 'sent', 'withCentre', 'answered', 'accepted'] as const;

export const studyMoves: readonly Move<StudyStep>[] = [
  { from: ['asked'], by: ['takeView'], to: 'imaging' },
  { from: ['imaging'], by: ['judgeView', 'settleViews'], to: 'ready' },
  { from: ['ready'], by: ['judgeView'], to: 'imaging' },
  { from: ['ready'], by: ['seal'], to: 'sealed' },
  { from: ['sealed'], by: ['send'], to: 'sent' },
  { from: ['sent'], by: ['acknowledge'], to: 'withCentre' },
  { from: ['sent', 'withCentre', 'appealed'], by: ['enterResult'], to: 'answered' },
  { from: ['answered'], by: ['acceptResult'], to: 'accepted' },
  { from: ['accepted'], by: ['releaseLetter'], to: 'released' },
  { from: ['released'], by: ['recordOutcome', 'resolveLetter'], to: 'reported' },
  { from: ['sent', 'withCentre'], by: ['rejectFilms'], to: 'rejected' },
  // With another visit already planned, the missing views are simply taken there.
  { from: ['sent', 'withCentre'], by: ['rejectFilms'], to: 'imaging' },
  { from: ['rejected'], by: ['openVisit'], to: 'imaging' },
  { from: ['rejected'], by: ['settleViews'], to: 'ready' },
  { from: ['sent', 'withCentre'], by: ['changeCentre'], to: 'sealed' },
  { from: ['answered'], by: ['refuseResult'], to: 'withCentre' },
  { from: ['accepted', 'released', 'reported', 'appealed'], by: ['withdrawResult'], to: 'withCentre' },
  { from: ['released', 'reported'], by: ['askAppeal'], to: 'appealed' },
  { from: ['appealed'], by: ['closeAppeal'], to: 'reported' },
  { from: ['appealed'], by: ['closeAppeal'], to: 'released' },
  { from: [...unsent, 'sent', 'withCentre'], by: ['endStudy'], to: 'ended' },
  { from: beforeLetter, by: ['withdrawStudy', 'decideAfterDeath'], to: 'ended' },
  { from: ['asked'], by: ['cancelOrder', 'recordDeath'], to: 'ended' },
];

/** These take a study back to wherever its films, packages and other results leave it; only the usual place is drawn. */
export const studyReturns: readonly Action[] = [
  'refuseResult', 'withdrawResult', 'askWhichStands', 'settleConflict', 'keyResult', 'consentStudy', 'changeCentre',
];
