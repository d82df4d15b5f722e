import type { Action } from './actions.js';
import type { Grant } from './evaluation.js';
import type { Role } from './facts.js';
import { type HoldCode, type OrderHoldCode, type StudyHoldCode, type VisitHoldCode } from './hold-codes.js';

export interface HoldRow {
  who: readonly Role[];
  forbids: readonly (Action | Grant)[];
  /** Actions that can end it. A hold without any ends by time. */
  ways: readonly Action[];
}

const letters = ['releaseLetter', 'releaseAgain', 'releaseCorrection', 'releaseFilmsRejected'] as const;
const beforeSedation = ['startSedation'] as const;

const order: Record<OrderHoldCode, HoldRow> = {
  NO_STUDY: { who: ['desk', 'vet'], forbids: ['openVisit'], ways: ['addStudy', 'cancelOrder'] },
  PAYER_UNKNOWN: { who: ['desk'], forbids: ['seal', 'send'], ways: ['namePayer'] },
  REFERRAL_OPEN: { who: ['desk', 'manager'], forbids: ['book', 'offerReferral'], ways: ['acceptReferral', 'closeReferral'] },
  REFERRAL_NOT_AGREED: { who: ['owner', 'desk'], forbids: ['acceptReferral'], ways: ['closeReferral'] },
  TRANSFER_NOT_AGREED: { who: ['owner', 'desk'], forbids: ['showBuyer'], ways: ['agreeTransfer'] },
  ADDRESSEE_TO_CONFIRM: { who: ['desk', 'vet'], forbids: letters, ways: ['confirmAddressees'] },
  ADDRESSEE_ERASED: { who: ['desk'], forbids: letters, ways: ['confirmAddressees'] },
  NO_ADDRESSEE: { who: ['desk'], forbids: letters, ways: ['confirmAddressees'] },
  PRACTICE_CLOSING: { who: ['manager'], forbids: ['offerReferral'], ways: ['handOver', 'closeReferral', 'cancelOrder'] },
  DEATH: {
    who: ['vet'],
    forbids: [...letters, 'openVisit', 'addStudy', 'offerReferral', 'cancelOrder', 'recordHarm'],
    ways: ['liftSilence'],
  },
  HARM: { who: ['vet'], forbids: [...letters, 'takeView', 'topUp', 'startSedation', 'openVisit'], ways: ['liftSilence'] },
  CASE_OWNER_MISSING: { who: ['manager', 'vet'], forbids: ['liftSilence', 'liftLegalHold'], ways: ['nameCaseOwner'] },
  LEGAL_HOLD: { who: ['manager'], forbids: ['erasePerson'], ways: ['liftLegalHold'] },
};

const visit: Record<VisitHoldCode, HoldRow> = {
  NO_SLOT: { who: ['desk'], forbids: [], ways: ['book', 'cancelVisit'] },
  REST_DAYS: { who: ['desk', 'vet'], forbids: ['admit'], ways: ['book', 'cancelVisit'] },
  DAY_PASSED: { who: ['desk'], forbids: [], ways: ['recordMissed', 'book', 'cancelVisit', 'admit'] },
  BEFORE_THE_DAY: { who: ['desk'], forbids: ['admit', 'recordMissed', 'turnAway'], ways: ['book', 'cancelVisit'] },
  ESTIMATE_NOT_ACCEPTED: {
    who: ['owner', 'agent', 'desk'], forbids: beforeSedation, ways: ['acceptEstimate', 'cancelVisit', 'turnAway'],
  },
  ANSWERS_MISSING: {
    who: ['desk', 'owner', 'nurse'], forbids: beforeSedation, ways: ['giveAnswers', 'cancelVisit', 'turnAway'],
  },
  ANSWERS_NOT_TODAY: { who: ['nurse'], forbids: beforeSedation, ways: ['giveAnswers', 'turnAway'] },
  ANSWER_UNKNOWN: {
    who: ['owner', 'vet'], forbids: beforeSedation, ways: ['giveAnswers', 'judgeAnswers', 'turnAway', 'cancelVisit'],
  },
  ANSWER_TO_JUDGE: {
    who: ['vet'], forbids: beforeSedation, ways: ['judgeAnswers', 'giveAnswers', 'turnAway', 'cancelVisit'],
  },
  PREGNANT: {
    who: ['owner', 'desk'], forbids: ['startSedation', 'admit'], ways: ['giveAnswers', 'cancelVisit', 'book', 'turnAway'],
  },
  POSTPONED: {
    who: ['vet', 'desk'], forbids: ['startSedation', 'admit'], ways: ['judgeAnswers', 'book', 'cancelVisit', 'turnAway'],
  },
  CONSENT_SEDATION_MISSING: {
    who: ['owner', 'agent'], forbids: ['startSedation', 'topUp', 'takeView'],
    ways: ['consentSedation', 'cancelVisit', 'turnAway', 'stopImaging'],
  },
  EMERGENCY_WISHES_MISSING: {
    who: ['owner', 'agent'], forbids: beforeSedation, ways: ['consentSedation', 'cancelVisit', 'turnAway'],
  },
  NOT_SCANNED: { who: ['nurse'], forbids: beforeSedation, ways: ['scanDog', 'settleIdentity', 'turnAway'] },
  NOT_SCANNED_AT_TABLE: {
    who: ['radiographer', 'nurse'], forbids: ['takeView'], ways: ['scanDog', 'settleIdentity', 'stopImaging'],
  },
  IDENTITY_NOT_MATCHED: {
    who: ['vet', 'nurse'], forbids: ['startSedation', 'topUp', 'takeView'],
    ways: ['scanDog', 'settleIdentity', 'turnAway', 'stopImaging'],
  },
  OUR_DOG_ELSEWHERE: {
    who: ['nurse', 'vet'], forbids: ['startSedation', 'topUp', 'takeView'],
    ways: ['scanDog', 'settleIdentity', 'turnAway', 'stopImaging'],
  },
  NOT_EXAMINED: { who: ['vet'], forbids: beforeSedation, ways: ['examine', 'turnAway'] },
  STATUS_CLASS: { who: ['vet'], forbids: beforeSedation, ways: ['examine', 'turnAway'] },
  PLAN_NOT_SIGNED: { who: ['vet'], forbids: beforeSedation, ways: ['signPlan', 'turnAway'] },
  PLAN_NOT_SIGNED_BY_ATTENDING: { who: ['vet'], forbids: beforeSedation, ways: ['signPlan', 'turnAway'] },
  PLAN_OTHER_WEIGHT: { who: ['vet'], forbids: beforeSedation, ways: ['signPlan', 'turnAway'] },
  TOP_UP_NOT_SIGNED: { who: ['vet'], forbids: ['topUp'], ways: ['signPlan', 'stopImaging'] },
  STUDY_NOT_READY: {
    who: ['desk', 'vet'], forbids: beforeSedation, ways: ['leaveStudyOut', 'cancelVisit', 'turnAway', 'book'],
  },
  NOTHING_TO_IMAGE: { who: ['desk'], forbids: ['startSedation', 'admit', 'book'], ways: ['cancelVisit', 'turnAway'] },
  READING_DUE: { who: ['nurse'], forbids: [], ways: ['recordReading'] },
  FILM_UNASSIGNED: { who: ['radiographer'], forbids: ['seal'], ways: ['assignFilm', 'disownFilm'] },
  FILM_OF_OTHER_DOG: { who: ['radiographer', 'vet'], forbids: ['seal', 'takeView'], ways: ['disownFilm', 'stopImaging'] },
  ROOM_PEOPLE_MISSING: { who: ['radiographer'], forbids: [], ways: ['logRoom'] },
  IMAGING_NOT_ENDED: { who: ['radiographer', 'nurse', 'vet'], forbids: ['seal'], ways: ['endImaging', 'stopImaging'] },
  RECOVERY_NOT_SIGNED: { who: ['nurse', 'vet'], forbids: ['sendHome'], ways: ['signRecovery'] },
  GOING_HOME_SHEET_MISSING: { who: ['nurse', 'vet'], forbids: ['sendHome'], ways: ['giveSheet'] },
};

const study: Record<StudyHoldCode, HoldRow> = {
  RULES_UNKNOWN: { who: ['manager'], forbids: ['takeView', 'seal'], ways: ['endStudy', 'seeProtocolChange', 'changeCentre'] },
  NO_VISIT: { who: ['desk'], forbids: [], ways: ['openVisit', 'settleViews', 'endStudy', 'decideAfterDeath'] },
  TOO_YOUNG: { who: ['desk'], forbids: ['takeView'], ways: ['book', 'leaveStudyOut', 'endStudy', 'cancelVisit'] },
  IMAGED_TOO_YOUNG: { who: ['vet'], forbids: ['seal'], ways: ['endStudy', 'disownFilm'] },
  NOT_FIT: {
    who: ['desk', 'manager'], forbids: ['takeView'],
    ways: ['checkFitness', 'book', 'offerReferral', 'leaveStudyOut', 'endStudy', 'cancelVisit', 'turnAway', 'stopImaging'],
  },
  PROTOCOL_CHANGED: {
    who: ['radiographer', 'vet', 'desk'], forbids: ['takeView'], ways: ['seeProtocolChange', 'leaveStudyOut', 'endStudy'],
  },
  CONSENT_STUDY_MISSING: {
    who: ['owner', 'agent'], forbids: ['takeView', 'seal', 'send'],
    ways: ['consentStudy', 'leaveStudyOut', 'endStudy', 'changeCentre'],
  },
  CONSENT_SEND_ALL_MISSING: {
    who: ['owner', 'agent'], forbids: ['takeView', 'seal'], ways: ['consentSendAll', 'leaveStudyOut', 'endStudy'],
  },
  VERDICT_MISSING: { who: ['radiographer'], forbids: ['seal'], ways: ['judgeView', 'disownFilm', 'endStudy'] },
  VIEWS_MISSING: {
    who: ['radiographer', 'desk', 'vet'], forbids: [],
    ways: ['takeView', 'judgeView', 'openVisit', 'settleViews', 'endStudy', 'book', 'decideAfterDeath'],
  },
  FILMS_REJECTED: {
    who: ['desk', 'vet'], forbids: [],
    ways: ['openVisit', 'settleViews', 'endStudy', 'takeView', 'judgeView', 'book', 'seal', 'changeCentre', 'decideAfterDeath'],
  },
  AFTER_DEATH_UNDECIDED: {
    who: ['vet'], forbids: ['seal', 'send', 'releaseLetter', 'takeChase', 'changeCentre'], ways: ['decideAfterDeath'],
  },
  FILM_NOT_SENT: {
    who: ['desk'], forbids: ['acceptResult', 'releaseLetter'], ways: ['sealSupplement', 'send', 'disownFilm', 'endStudy'],
  },
  NOT_SENT: {
    who: ['desk'], forbids: [], ways: ['send', 'endStudy', 'clearCause', 'namePayer', 'consentStudy', 'decideAfterDeath'],
  },
  SEND_UNCERTAIN: { who: ['desk', 'manager'], forbids: [], ways: ['resolveSend', 'send', 'acknowledge'] },
  CENTRE_CLOSED: { who: ['desk', 'manager'], forbids: ['send'], ways: ['changeCentre', 'endStudy', 'closeAppeal'] },
  UNPAID: { who: ['manager'], forbids: [], ways: ['clearCause', 'changeCentre', 'endStudy', 'enterResult'] },
  CAUSE_KNOWN: { who: ['desk', 'manager'], forbids: [], ways: ['clearCause', 'changeCentre', 'endStudy', 'enterResult'] },
  NOT_ACKNOWLEDGED: {
    who: ['reader', 'desk'], forbids: [], ways: ['acknowledge', 'takeChase', 'changeCentre', 'endStudy', 'enterResult'],
  },
  RESULT_OVERDUE: {
    who: ['reader', 'desk'], forbids: [], ways: ['enterResult', 'rejectFilms', 'takeChase', 'changeCentre', 'endStudy'],
  },
  RESULT_NOT_EXPECTED: { who: ['vet', 'desk'], forbids: ['acceptResult'], ways: ['refuseResult', 'explainResult'] },
  RESULTS_DISAGREE: {
    who: ['vet'], forbids: ['acceptResult', 'releaseLetter', 'releaseAgain'], ways: ['askWhichStands', 'settleConflict', 'refuseResult'],
  },
  PHONE_ONLY: { who: ['reader', 'desk'], forbids: ['acceptResult'], ways: ['enterResult', 'refuseResult'] },
  POST_NOT_KEYED_TWICE: { who: ['desk', 'nurse', 'vet'], forbids: ['acceptResult'], ways: ['keyResult', 'refuseResult'] },
  KEYED_DIFFERENTLY: { who: ['desk', 'vet'], forbids: ['acceptResult'], ways: ['keyResult', 'refuseResult'] },
  RESULT_IDENTITY_MISMATCH: { who: ['vet', 'reader'], forbids: ['acceptResult'], ways: ['refuseResult', 'enterResult'] },
  RESULT_TO_EXPLAIN: { who: ['vet'], forbids: ['acceptResult'], ways: ['explainResult', 'refuseResult'] },
  RESULT_TO_CHECK: {
    who: ['vet'], forbids: [],
    ways: ['acceptResult', 'refuseResult', 'settleConflict', 'keyResult', 'sealSupplement', 'send', 'explainResult', 'decideAfterDeath'],
  },
  APPEAL_OPEN: {
    who: ['reader'], forbids: ['releaseLetter'],
    ways: ['enterResult', 'acceptResult', 'takeChase', 'refuseResult', 'closeAppeal'],
  },
  PHONE_FIRST: {
    who: ['vet'], forbids: ['releaseLetter'], ways: ['recordCall', 'setPhoneFirst', 'acceptResult', 'refuseResult'],
  },
  LETTER_WAITS: { who: ['vet'], forbids: ['releaseLetter'], ways: [] },
  LETTER_NOT_RELEASED: {
    who: ['vet'], forbids: [],
    ways: [
      'releaseLetter', 'recordCall', 'withdrawResult', 'decideAfterDeath', 'confirmAddressees', 'liftSilence',
      'settleConflict', 'sealSupplement', 'nameCaseOwner', 'send', 'disownFilm', 'closeAppeal',
    ],
  },
  LETTER_ON_ITS_WAY: { who: ['queue'], forbids: [], ways: ['recordOutcome', 'resolveLetter', 'releaseAgain'] },
  LETTER_NOT_DELIVERED: { who: ['queue', 'desk'], forbids: [], ways: ['recordOutcome', 'resolveLetter', 'releaseAgain'] },
  CORRECTION_DUE: {
    who: ['vet'], forbids: [], ways: ['releaseCorrection', 'confirmAddressees', 'liftSilence', 'nameCaseOwner'],
  },
  CENTRE_TO_TELL: { who: ['desk'], forbids: [], ways: ['tellCentre', 'consentStudy'] },
  NOTE_NOT_TAKEN: { who: ['desk', 'manager'], forbids: [], ways: ['tellOfNote'] },
};

export const holdTable: Record<HoldCode, HoldRow> = { ...order, ...visit, ...study };
