import { kindsOfMarks } from '#libs/science/measurement/mark-kinds';
import type { ActionRow } from './actions.js';
import { lack, lastWord } from './consent.js';
import type { OrderPicture } from './order-picture.js';
import type { VisitStep } from './steps.js';
import type { VisitPicture } from './visit-picture.js';

export interface VisitSituation {
  visit: VisitPicture;
  order: OrderPicture;
  /** Listed studies that have not ended. */
  openStudies: number;
}

type Offered = (situation: VisitSituation) => boolean;
const at = (...steps: VisitStep[]): Offered => ({ visit }) => steps.includes(visit.step);
const hasFilm: Offered = ({ visit }) => visit.films.length > 0;
const unsealed: Offered = ({ visit }) => visit.films.some((film) => !film.sealed && !film.disowned);
const measurable: Offered = ({ visit }) => visit.films.some((film) => kindsOfMarks(film.view).length > 0);
const beforeSedation = at('wanted', 'booked', 'admitted');
const scanned: Offered = ({ visit }) => visit.facts.has('identityScanned') || visit.facts.has('ourDogSeenElsewhere');

/** Stopping, monitoring and recovery are held by nothing, ever. */
export const visitActions = {
  book: { roles: ['desk'], writes: 'visitBooked', offered: at('wanted', 'booked') },
  cancelVisit: { roles: ['desk', 'owner'], writes: 'visitCancelled', offered: at('wanted', 'booked') },
  admit: { roles: ['nurse'], writes: 'admitted', offered: at('booked') },
  recordMissed: { roles: ['desk'], writes: 'visitMissed', offered: at('booked') },
  acceptEstimate: { roles: ['owner', 'agent', 'desk', 'nurse'], writes: 'estimateAccepted', offered: beforeSedation },
  giveAnswers: { roles: ['desk', 'owner', 'agent', 'nurse'], writes: 'answersGiven', offered: beforeSedation },
  judgeAnswers: { roles: ['vet'], writes: 'answersJudged', offered: beforeSedation },
  checkFitness: { roles: ['queue', 'desk'], writes: 'fitnessChecked', offered: beforeSedation },
  leaveStudyOut: {
    roles: ['vet', 'desk'], writes: 'studyLeftOut', offered: (now) => beforeSedation(now) && now.openStudies > 1,
  },
  consentSedation: { roles: ['owner', 'agent'], writes: 'consentGiven', offered: beforeSedation },
  withdrawSedation: {
    roles: ['owner', 'agent', 'desk', 'vet'], writes: 'consentWithdrawn',
    offered: (now) => at('wanted', 'booked', 'admitted', 'sedated')(now)
      && lack(lastWord('sedation', now.visit.facts), undefined) === null,
  },
  turnAway: { roles: ['vet', 'nurse'], writes: 'turnedAway', offered: at('booked', 'admitted') },
  scanDog: { roles: ['nurse', 'radiographer', 'vet'], writes: 'identityScanned', offered: at('booked', 'admitted', 'sedated') },
  settleIdentity: {
    roles: ['vet'], writes: 'identitySettled',
    offered: (now) => at('admitted', 'sedated')(now) || (at('booked')(now) && scanned(now)),
  },
  examine: { roles: ['vet'], writes: 'examined', offered: at('admitted') },
  startSedation: { roles: ['vet', 'nurse'], writes: 'sedationStarted', offered: at('admitted') },
  signPlan: { roles: ['vet'], writes: 'planSigned', offered: at('admitted', 'sedated') },
  topUp: { roles: ['vet', 'nurse'], writes: 'sedationStarted', offered: at('sedated') },
  endImaging: { roles: ['radiographer', 'vet'], writes: 'imagingEnded', offered: at('sedated') },
  stopImaging: {
    roles: ['desk', 'nurse', 'radiographer', 'vet', 'manager'], writes: 'imagingEnded', offered: at('sedated'),
  },
  recordReading: { roles: ['nurse', 'vet'], writes: 'readingTaken', offered: at('sedated', 'imaged', 'died') },
  recordDrug: {
    roles: ['nurse', 'vet'], writes: 'drugRecorded', offered: at('admitted', 'sedated', 'imaged', 'recovered', 'died'),
  },
  recordEvent: {
    roles: ['nurse', 'vet', 'radiographer'], writes: 'eventRecorded',
    offered: at('sedated', 'imaged', 'recovered', 'home', 'died'),
  },
  signRecovery: { roles: ['nurse', 'vet'], writes: 'recoverySigned', offered: at('imaged') },
  giveSheet: {
    roles: ['nurse', 'vet'], writes: 'sheetGiven',
    offered: (now) => at('imaged', 'recovered')(now) && !now.visit.facts.has('sheetGiven'),
  },
  sendHome: { roles: ['nurse', 'vet'], writes: 'wentHome', offered: at('recovered', 'admitted') },
  assignFilm: { roles: ['radiographer', 'vet'], writes: 'exposureAssigned', offered: hasFilm },
  stateSize: { roles: ['radiographer', 'vet'], writes: 'filmSized', offered: unsealed },
  disownFilm: { roles: ['radiographer', 'vet'], writes: 'exposureDisowned', offered: hasFilm },
  markFilm: { roles: ['radiographer', 'vet'], writes: 'filmMarked', offered: (now) => at('sedated')(now) && measurable(now) },
  logRoom: { roles: ['radiographer', 'vet', 'nurse'], writes: 'roomLogged', offered: hasFilm },
} as const satisfies Record<string, ActionRow<VisitSituation>>;
