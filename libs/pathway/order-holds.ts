import { addDays } from './days.js';
import { isAfter } from './effective.js';
import type { Hold } from './evaluation.js';
import { holdsOn } from './hold.js';
import type { OrderPicture } from './order-picture.js';
import type { StudyPicture } from './study-picture.js';
import type { VisitPicture } from './visit-picture.js';
import { localDay } from './zones.js';

export function orderHolds(order: OrderPicture, studies: StudyPicture[], visits: VisitPicture[]): Hold[] {
  const { raise, holds } = holdsOn({ scope: 'order', id: order.id });
  const openStudy = studies.some((study) => study.open);
  const open = openStudy || visits.some((visit) => visit.open) || (studies.length === 0 && !order.cancelled);
  const letterToCome = openStudy || studies.some((study) => study.letters.correctionDue);

  if (studies.length === 0 && !order.cancelled && !order.died) raise('NO_STUDY');
  if (openStudy && order.payer === undefined) raise('PAYER_UNKNOWN');
  if (order.referral) {
    const { to, expires, ownerAgreed } = order.referral;
    raise('REFERRAL_OPEN', { by: expires, until: expires, detail: { to } });
    if (!ownerAgreed) raise('REFERRAL_NOT_AGREED', { detail: { to } });
  }
  if (order.transfer && !order.transferAgreed) raise('TRANSFER_NOT_AGREED');
  if (letterToCome) addressHolds(order, raise);
  if (order.closing && open) raise('PRACTICE_CLOSING', { by: order.closing.lastDay });
  if (order.silentFor.death) raise('DEATH');
  if (order.silentFor.harm) raise('HARM');
  if (order.frozenAt !== null && order.caseOwner === undefined) {
    raise('CASE_OWNER_MISSING', { by: addDays(localDay(order.frozenAt, order.zone), 1) });
  }
  if (order.legalHold) raise('LEGAL_HOLD');
  return holds;
}

function addressHolds(order: OrderPicture, raise: ReturnType<typeof holdsOn>['raise']): void {
  if (isAfter(order.transfer, order.addressedBy)) raise('ADDRESSEE_TO_CONFIRM');
  const erased = order.addressees.map((one) => one.person).filter((person) => order.erased.has(person));
  if (erased.length > 0) raise('ADDRESSEE_ERASED');
  if (order.addressees.length === 0) raise('NO_ADDRESSEE');
}
