import type { ActionRow } from './actions.js';
import { causesOf } from './chase.js';
import { addDays } from './days.js';
import { lack } from './consent.js';
import type { HoldCode } from './hold-codes.js';
import type { OrderPicture } from './order-picture.js';
import type { StudyStep } from './steps.js';
import { phoneFirst } from './study-letter-holds.js';
import type { StudyPicture } from './study-picture.js';
import { localDay } from './zones.js';

export interface StudySituation {
  study: StudyPicture;
  order: OrderPicture;
  now: string;
  /** Codes of the study's own holds. */
  holds: Set<HoldCode>;
}

type Offered = (situation: StudySituation) => boolean;
const at = (...steps: StudyStep[]): Offered => ({ study }) => steps.includes(study.step);
const open: Offered = ({ study }) => study.open;
const unanswered = at('asked', 'imaging', 'ready', 'sealed', 'sent', 'withCentre', 'rejected');
const withReader = at('sent', 'withCentre', 'appealed');
const withdrawn: Offered = ({ study }) =>
  study.why === 'withdrawn' || study.why === 'withdrawnAfterSending';
const hasFilm: Offered = ({ study }) => study.films.length > 0;
const asleep: Offered = ({ study }) => study.visit?.step === 'sedated';

/** Late films go on their own, as a supplement to the package that is out. */
const unpacked: Offered = ({ study }) => study.step !== 'ended' && study.packages.unpacked.length > 0;
const unsent: Offered = ({ study }) => study.step !== 'ended' && study.packages.unsent.length > 0;

function mayAppeal({ study, now }: StudySituation): boolean {
  const letter = study.letters.current;
  if (!letter || study.letters.appealed || !study.centreRules) return false;
  const { calendar, appealDays } = study.centreRules;
  return localDay(now, calendar.zone) <= addDays(localDay(letter.at, calendar.zone), appealDays);
}

export const studyActions = {
  consentStudy: { roles: ['owner', 'agent'], writes: 'consentGiven', offered: (now) => open(now) || withdrawn(now) },
  consentSendAll: {
    roles: ['owner', 'agent'], writes: 'consentGiven',
    offered: (now) => open(now) && (!now.study.packages.everSent || now.holds.has('CONSENT_SEND_ALL_MISSING')),
  },
  withdrawStudy: {
    roles: ['owner', 'agent', 'desk'], writes: 'consentWithdrawn',
    offered: (now) => open(now) && lack(now.study.consent, undefined) === null,
  },
  seeProtocolChange: {
    roles: ['radiographer', 'vet', 'desk'], writes: 'protocolChangeSeen', offered: (now) => now.holds.has('PROTOCOL_CHANGED'),
  },
  endStudy: { roles: ['vet', 'desk'], writes: 'studyEnded', offered: unanswered },
  decideAfterDeath: {
    roles: ['vet'], writes: 'afterDeathDecided',
    offered: (now) => open(now) && now.order.died !== undefined && !now.study.letters.resultOut,
  },
  takeView: {
    roles: ['radiographer', 'vet', 'queue'], writes: 'exposureTaken',
    offered: (now) => at('asked', 'imaging', 'ready')(now) && asleep(now),
  },
  judgeView: {
    roles: ['radiographer', 'vet'], writes: 'verdictGiven', offered: (now) => at('imaging', 'ready')(now) && hasFilm(now),
  },
  settleViews: {
    roles: ['vet', 'desk'], writes: 'viewsSettled', offered: (now) => at('imaging', 'rejected')(now) && hasFilm(now),
  },
  seal: { roles: ['desk'], writes: 'packageSealed', offered: at('ready') },
  send: { roles: ['desk'], writes: 'packageSent', offered: unsent },
  sealSupplement: { roles: ['desk'], writes: 'packageSealed', offered: unpacked },
  resolveSend: {
    roles: ['desk', 'manager'], writes: 'sendResolved',
    offered: (now) => open(now) && now.holds.has('SEND_UNCERTAIN') && now.study.packages.uncertain.some((one) => !one.resolved),
  },
  acknowledge: {
    roles: ['reader', 'desk'], writes: 'acknowledged',
    offered: (now) => at('sent')(now) || now.holds.has('SEND_UNCERTAIN'),
  },
  rejectFilms: { roles: ['reader', 'desk'], writes: 'filmsRejected', offered: at('sent', 'withCentre') },
  enterResult: { roles: ['reader', 'desk', 'queue'], writes: 'resultArrived', offered: (now) => withReader(now) || at('answered')(now) },
  recordCause: {
    roles: ['desk', 'manager', 'queue'], writes: 'causeFound', offered: (now) => withReader(now) || at('sealed')(now),
  },
  clearCause: {
    roles: ['desk', 'manager'], writes: 'causeCleared',
    offered: (now) => (withReader(now) || at('sealed')(now)) && causesOf(now.study).length > 0,
  },
  recordAutoReply: { roles: ['desk', 'manager', 'queue'], writes: 'autoReplied', offered: withReader },
  takeChase: { roles: ['desk', 'manager'], writes: 'chaseTaken', offered: withReader },
  changeCentre: { roles: ['desk', 'manager'], writes: 'centreChanged', offered: unanswered },
  keyResult: {
    roles: ['desk', 'nurse', 'vet'], writes: 'resultKeyed',
    offered: ({ study }) => study.step === 'answered' && study.results.waiting.some((result) => result.channel === 'post'),
  },
  explainResult: { roles: ['vet'], writes: 'resultExplained', offered: at('answered') },
  refuseResult: { roles: ['vet'], writes: 'resultRefused', offered: at('answered') },
  askWhichStands: { roles: ['vet', 'desk'], writes: 'whichStandsAsked', offered: (now) => now.holds.has('RESULTS_DISAGREE') },
  settleConflict: { roles: ['vet'], writes: 'conflictSettled', offered: (now) => now.holds.has('RESULTS_DISAGREE') },
  acceptResult: { roles: ['vet'], writes: 'resultAccepted', offered: at('answered') },
  setPhoneFirst: { roles: ['vet'], writes: 'phoneFirstSet', offered: at('answered', 'accepted') },
  releaseLetter: { roles: ['vet'], writes: 'letterReleased', offered: at('accepted') },
  recordCall: {
    roles: ['vet'], writes: 'ownerPhoned', offered: (now) => at('accepted')(now) && phoneFirst(now.study) !== undefined,
  },
  withdrawResult: {
    roles: ['vet', 'reader'], writes: 'resultWithdrawn',
    offered: ({ study }) => study.step !== 'ended' && study.results.accepted !== undefined,
  },
  recordOutcome: { roles: ['queue', 'desk'], writes: 'letterOutcome', offered: at('released') },
  resolveLetter: { roles: ['desk', 'vet'], writes: 'letterResolved', offered: at('released') },
  releaseAgain: {
    roles: ['vet', 'desk'], writes: 'letterReleased',
    offered: (now) => at('released')(now) && now.study.letters.bounced.length > 0,
  },
  askAppeal: {
    roles: ['owner', 'desk'], writes: 'appealAsked', offered: (now) => at('released', 'reported')(now) && mayAppeal(now),
  },
  closeAppeal: { roles: ['owner', 'desk', 'vet'], writes: 'appealClosed', offered: (now) => now.holds.has('APPEAL_OPEN') },
  releaseFilmsRejected: {
    roles: ['vet'], writes: 'letterReleased',
    offered: ({ study }) => study.open && study.letters.rejectionUntold && !study.letters.resultOut,
  },
  releaseCorrection: { roles: ['vet'], writes: 'letterReleased', offered: (now) => now.holds.has('CORRECTION_DUE') },
  tellCentre: { roles: ['desk'], writes: 'centreTold', offered: (now) => now.holds.has('CENTRE_TO_TELL') },
  tellOfNote: { roles: ['desk', 'manager'], writes: 'noteTold', offered: (now) => now.holds.has('NOTE_NOT_TAKEN') },
} as const satisfies Record<string, ActionRow<StudySituation>>;
