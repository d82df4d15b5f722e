import { answersOf } from './answers.js';
import { lackOf, lastWord, type Lacking } from './consent.js';
import { isAfter } from './effective.js';
import type { Hold } from './evaluation.js';
import type { FactOf } from './facts.js';
import { holdsOn } from './hold.js';
import { identityOf } from './identity.js';
import type { OrderPicture } from './order-picture.js';
import type { StudyPicture } from './study-picture.js';
import type { VisitPicture } from './visit-picture.js';
import { readingDueAt } from './reading-due.js';
import { localDay } from './zones.js';

type Raise = ReturnType<typeof holdsOn>['raise'];

/** What `visitHolds` needs to know of a listed study. */
export interface ListedStudy { picture: StudyPicture; holds: Hold[] }

export function visitHolds(visit: VisitPicture, order: OrderPicture, listed: ListedStudy[], now: string): Hold[] {
  const { raise, holds } = holdsOn({ scope: 'visit', id: visit.id });
  const today = localDay(now, visit.zone);
  const toCome = visit.step === 'wanted' || visit.step === 'booked' || visit.step === 'admitted';
  const here = visit.step === 'booked' || visit.step === 'admitted' || visit.step === 'sedated';

  dayHolds(visit, today, raise);
  if (toCome) agreementHolds(visit, today, raise);
  if (toCome || visit.step === 'sedated') consentHolds(visit, order, raise);
  if (here) identityHolds(visit, order, raise);
  if (visit.step === 'admitted') examinationHolds(visit, raise);
  if (visit.step === 'sedated') topUpHold(visit, raise);
  if (toCome) studyHolds(visit, listed, raise);
  if (visit.step === 'sedated' || visit.step === 'imaged') readingHold(visit, now, raise);
  filmHolds(visit, raise);
  if (visit.step === 'sedated') raise('IMAGING_NOT_ENDED');
  if (visit.step === 'imaged') raise('RECOVERY_NOT_SIGNED');
  const leaving = visit.step === 'imaged' || visit.step === 'recovered';
  if (leaving && !visit.facts.has('sheetGiven')) raise('GOING_HOME_SHEET_MISSING');
  return holds;
}

function dayHolds(visit: VisitPicture, today: string, raise: Raise): void {
  if (visit.step === 'wanted') raise('NO_SLOT');
  if (visit.step !== 'booked' || !visit.booking) return;
  const { day } = visit.booking;
  const restUntil = visit.facts.first('visitOpened')?.restUntil;
  if (restUntil !== undefined && day < restUntil && today < restUntil) raise('REST_DAYS', { until: restUntil });
  if (today > day) raise('DAY_PASSED');
  if (today < day) raise('BEFORE_THE_DAY', { until: day });
}

function agreementHolds(visit: VisitPicture, today: string, raise: Raise): void {
  const by = visit.booking?.day;
  if (!visit.facts.has('estimateAccepted')) raise('ESTIMATE_NOT_ACCEPTED', { by });
  const answers = answersOf(visit, today);
  if (answers.missing.length > 0) raise('ANSWERS_MISSING', { by, detail: { questions: answers.missing } });
  else if (visit.step === 'admitted' && answers.missingToday.length > 0) {
    raise('ANSWERS_NOT_TODAY', { detail: { questions: answers.missingToday } });
  }
  if (answers.unknown.length > 0) raise('ANSWER_UNKNOWN', { by, detail: { questions: answers.unknown } });
  if (answers.toJudge.length > 0) raise('ANSWER_TO_JUDGE', { by, detail: { questions: answers.toJudge } });
  if (answers.pregnant) raise('PREGNANT');
  if (answers.postponed) raise('POSTPONED', { until: answers.postponed.until });
}

function consentHolds(visit: VisitPicture, order: OrderPicture, raise: Raise): void {
  const by = visit.booking?.day;
  const word = lastWord('sedation', visit.facts);
  const text = visit.step === 'sedated' ? undefined : visit.practiceRules?.sedationText;
  const lacks = lackOf('sedation', [visit.facts], order.signers, text) ?? soldSince(word, visit, order);
  if (lacks) {
    raise('CONSENT_SEDATION_MISSING', { by, detail: lacks });
  } else if (visit.step !== 'sedated' && word?.type === 'consentGiven' && !wishesComplete(word)) {
    raise('EMERGENCY_WISHES_MISSING', { by });
  }
}

/** The yes of somebody who has sold the dog puts it to sleep no more; the wishes and the limit are the buyer's to give. */
function soldSince(word: ReturnType<typeof lastWord>, visit: VisitPicture, { transfer }: OrderPicture): Lacking | null {
  return visit.step !== 'sedated' && word && isAfter(transfer, word) ? { lacks: 'sold' } : null;
}

function wishesComplete({ emergency }: FactOf<'consentGiven'>): boolean {
  return emergency?.resuscitate !== undefined && emergency.limitMinor !== undefined
    && Boolean(emergency.number) && (emergency.collectors?.length ?? 0) > 0;
}

function identityHolds(visit: VisitPicture, order: OrderPicture, raise: Raise): void {
  const identity = identityOf(visit, order.numbers);
  if (visit.step === 'admitted' && !identity.scanned) raise('NOT_SCANNED');
  if (visit.step === 'sedated' && !identity.scannedAtTable) raise('NOT_SCANNED_AT_TABLE');
  if (identity.mismatched) raise('IDENTITY_NOT_MATCHED');
  if (identity.seenElsewhere) raise('OUR_DOG_ELSEWHERE');
}

function examinationHolds(visit: VisitPicture, raise: Raise): void {
  const examined = visit.facts.last('examined');
  if (!examined) raise('NOT_EXAMINED');
  else if (examined.statusClass > 3 || (examined.statusClass === 3 && !examined.reason)) raise('STATUS_CLASS');
  const plan = visit.facts.latest('planSigned', (fact) => fact.kind === 'first');
  if (!plan) raise('PLAN_NOT_SIGNED');
  else if (!plan.vetPresent) raise('PLAN_NOT_SIGNED_BY_ATTENDING');
  else if (plan.weightKg !== visit.facts.first('admitted')?.weightKg) raise('PLAN_OTHER_WEIGHT');
}

function topUpHold(visit: VisitPicture, raise: Raise): void {
  const begun = new Set(visit.facts.all('sedationStarted').map((fact) => fact.plan));
  const signed = visit.facts.all('planSigned').some((plan) => plan.kind === 'topUp' && plan.vetPresent && !begun.has(plan.plan));
  if (!signed) raise('TOP_UP_NOT_SIGNED');
}

/** A dog is not put to sleep for a study that could then not be imaged. */
function studyHolds(visit: VisitPicture, listed: ListedStudy[], raise: Raise): void {
  const blocked = listed.filter(({ picture, holds }) => picture.open && holds.some((hold) => hold.forbids.includes('takeView')));
  if (blocked.length > 0) {
    raise('STUDY_NOT_READY', { by: visit.booking?.day, detail: { studies: blocked.map(({ picture }) => picture.id) } });
  }
  const toImage = ({ picture: { step } }: ListedStudy): boolean => step === 'asked' || step === 'imaging' || step === 'rejected';
  if (!listed.some(toImage)) raise('NOTHING_TO_IMAGE');
}

function readingHold(visit: VisitPicture, now: string, raise: Raise): void {
  const readings = [visit.facts.last('readingTaken'), visit.facts.first('sedationStarted')];
  const last = readings.flatMap((fact) => (fact ? [fact.at] : [])).sort().at(-1);
  if (last === undefined) return;
  const by = readingDueAt(last);
  if (now < by) return;
  raise('READING_DUE', { by, detail: { minutes: Math.floor((Date.parse(now) - Date.parse(last)) / 60_000) } });
}

function filmHolds(visit: VisitPicture, raise: Raise): void {
  const kept = visit.films.filter((film) => !film.disowned && !film.lost);
  const which = (wrong: (film: (typeof kept)[number]) => boolean): string[] => kept.filter(wrong).map((film) => film.id);
  const unassigned = which((film) => film.serves.length === 0);
  if (unassigned.length > 0) raise('FILM_UNASSIGNED', { detail: { exposures: unassigned } });
  const mismatched = which((film) => film.mismatched);
  if (mismatched.length > 0) raise('FILM_OF_OTHER_DOG', { detail: { exposures: mismatched } });
  const alone = visit.films.filter((film) => !film.peopleKnown).map((film) => film.id);
  if (alone.length > 0) raise('ROOM_PEOPLE_MISSING', { detail: { exposures: alone } });
}
