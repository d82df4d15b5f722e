import type { ActionRow } from './actions.js';
import type { HoldCode } from './hold-codes.js';
import type { OrderPicture } from './order-picture.js';
import type { OrderStep } from './steps.js';
import type { StudyPicture } from './study-picture.js';

export interface OrderSituation {
  order: OrderPicture;
  step: OrderStep;
  studies: StudyPicture[];
  /** Codes of the order's own holds. */
  holds: Set<HoldCode>;
}

const exists = ({ step }: OrderSituation): boolean => step !== 'none';
const open = (at: OrderSituation): boolean => exists(at) && at.step !== 'cancelled';
const underWay = (at: OrderSituation): boolean => open(at) && at.step !== 'closed';
/** A dead dog gets no new studies, visits or referrals; the hold says so as long as it stands. */
const living = ({ order }: OrderSituation): boolean => !order.died || order.silentFor.death;
const wantsVisit = (study: StudyPicture): boolean =>
  (study.step === 'asked' || study.step === 'imaging' || study.step === 'rejected') && !study.visit;

export const orderActions = {
  openOrder: { roles: ['desk', 'vet'], writes: 'orderOpened', offered: (at) => !exists(at) },
  addStudy: { roles: ['desk', 'vet'], writes: 'studyAdded', offered: (at) => open(at) && living(at) },
  namePayer: { roles: ['desk'], writes: 'payerNamed', offered: exists },
  confirmAddressees: { roles: ['desk', 'vet'], writes: 'addresseesConfirmed', offered: exists },
  nameSigners: { roles: ['desk', 'vet'], writes: 'signersNamed', offered: underWay },
  chooseLetterTime: { roles: ['owner', 'desk'], writes: 'letterTimeChosen', offered: underWay },
  openVisit: {
    roles: ['desk', 'vet'], writes: 'visitOpened',
    offered: (at) => !at.order.cancelled && living(at) && at.studies.some(wantsVisit),
  },
  cancelOrder: { roles: ['desk', 'owner'], writes: 'orderCancelled', offered: (at) => underWay(at) && !at.order.cancelled },
  offerReferral: {
    roles: ['desk'], writes: 'referralOffered',
    offered: (at) => living(at) && at.studies.some((study) => study.open),
  },
  acceptReferral: { roles: ['desk', 'manager'], writes: 'referralAnswered', offered: (at) => at.order.referral !== undefined },
  closeReferral: { roles: ['desk', 'manager'], writes: 'referralAnswered', offered: (at) => at.order.referral !== undefined },
  recordTransfer: { roles: ['desk'], writes: 'dogTransferred', offered: exists },
  agreeTransfer: { roles: ['owner', 'desk'], writes: 'transferAgreed', offered: (at) => at.holds.has('TRANSFER_NOT_AGREED') },
  handOver: { roles: ['manager'], writes: 'handedOver', offered: (at) => at.holds.has('PRACTICE_CLOSING') },
  recordDeath: { roles: ['vet', 'nurse', 'desk'], writes: 'dogDied', offered: (at) => exists(at) && !at.order.died },
  recordHarm: {
    roles: ['vet', 'nurse'], writes: 'harmRecorded', offered: (at) => exists(at) && !at.order.silentFor.harm,
  },
  nameCaseOwner: { roles: ['manager', 'vet'], writes: 'caseOwnerNamed', offered: (at) => at.order.frozenAt !== null },
  liftSilence: { roles: ['vet'], writes: 'silenceLifted', offered: (at) => at.holds.has('DEATH') || at.holds.has('HARM') },
  liftLegalHold: { roles: ['manager'], writes: 'legalHoldLifted', offered: (at) => at.order.legalHold },
  erasePerson: { roles: ['manager'], writes: 'personErased', offered: exists },
  answerStatistics: { roles: ['owner', 'agent'], writes: 'consentGiven', offered: exists },
} as const satisfies Record<string, ActionRow<OrderSituation>>;
