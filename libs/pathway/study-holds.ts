import { causesOf, chaseOf, closureOn, closuresOf, isOverdue } from './chase.js';
import { addDays, daysBetween } from './days.js';
import { oldEnoughFrom } from './age.js';
import { lackOf } from './consent.js';
import type { Chase, Hold } from './evaluation.js';
import { isAfter } from './effective.js';
import { holdsOn } from './hold.js';
import type { OrderPicture } from './order-picture.js';
import type { Rules } from './rules.js';
import { notesNotTaken } from './study-notes.js';
import { resultHolds } from './study-result-holds.js';
import { letterHolds } from './study-letter-holds.js';
import type { StudyPicture } from './study-picture.js';
import { localDay } from './zones.js';

type Raise = ReturnType<typeof holdsOn>['raise'];

export interface StudySetting { order: OrderPicture; all: StudyPicture[]; rules: Rules; now: string }

export function studyHolds(study: StudyPicture, setting: StudySetting): { holds: Hold[]; chase: Chase | undefined } {
  const { raise, holds } = holdsOn({ scope: 'study', id: study.id });
  const chase = chaseOf(study, setting.order, setting.now);
  if (study.open) {
    // First, so that nobody is asked to agree a day with a family whose dog has died.
    if (setting.order.died && !study.letters.resultOut && !study.facts.has('afterDeathDecided')) raise('AFTER_DEATH_UNDECIDED');
    const toImage = study.step === 'asked' || study.step === 'imaging' || study.step === 'rejected';
    const toSeal = toImage || study.step === 'ready';
    if (toSeal && (!study.protocolRules || !study.centreRules)) rulesUnknown(study, raise);
    if (toImage && !study.visit && !setting.order.died) raise('NO_VISIT');
    if (toImage) visitDayHolds(study, setting, raise);
    if (toSeal) imagedTooYoung(study, setting, raise);
    if (toImage) fitnessHold(study, setting, raise);
    if (study.unseenChange) raise('PROTOCOL_CHANGED', { detail: { version: study.unseenChange.version } });
    consentHolds(study, setting, raise);
    filmHolds(study, raise);
  }
  if (study.step !== 'ended') sendHolds(study, setting, raise);
  if (study.open) {
    centreHolds(study, setting, chase, raise);
    if (study.step === 'answered') resultHolds(study, raise);
    letterHolds(study, setting, raise);
  }
  if (study.letters.correctionDue) raise('CORRECTION_DUE');
  if (study.why === 'withdrawnAfterSending' && isAfter(study.facts.last('packageSent'), study.facts.last('centreTold'))) raise('CENTRE_TO_TELL');
  if (notesNotTaken(study.facts).length > 0) raise('NOTE_NOT_TAKEN');
  return { holds, chase };
}

function rulesUnknown(study: StudyPicture, raise: Raise): void {
  raise('RULES_UNKNOWN', { detail: study.protocolRules ? { centre: study.centre } : { version: `${study.protocol}@${study.version}` } });
}

function visitDayHolds({ visit, protocolRules }: StudyPicture, { order, now }: StudySetting, raise: Raise): void {
  if (!visit?.booking || !protocolRules || !order.birth) return;
  const today = localDay(now, visit.zone);
  const day = today > visit.booking.day ? today : visit.booking.day;
  const earliestDate = oldEnoughFrom(order.birth, protocolRules.youngest);
  if (day < earliestDate) {
    raise('TOO_YOUNG', { until: earliestDate, detail: { earliestDate, daysShort: daysBetween(day, earliestDate) } });
  }
}

function imagedTooYoung({ films, protocolRules }: StudyPicture, { order }: StudySetting, raise: Raise): void {
  if (!protocolRules || !order.birth) return;
  const earliestDate = oldEnoughFrom(order.birth, protocolRules.youngest);
  const early = films.filter((film) => film.day < earliestDate).map((film) => film.id);
  if (early.length > 0) raise('IMAGED_TOO_YOUNG', { detail: { earliestDate, exposures: early } });
}

function fitnessHold({ id, visit }: StudyPicture, { now }: StudySetting, raise: Raise): void {
  const checked = visit?.facts.latest('fitnessChecked', (fact) => fact.study === id);
  // A check is about the day and place that were booked then; moving the visit asks for a new one.
  if (!visit || !checked || (visit.booking && checked.at < visit.booking.at)) return;
  const today = localDay(now, visit.zone);
  const problems = checked.problems.filter((problem) => problem.until === undefined || today < problem.until);
  if (problems.length === 0) return;
  const ends = problems.map((problem) => problem.until);
  raise('NOT_FIT', {
    by: visit.booking?.day,
    until: ends.includes(undefined) ? undefined : ends.sort().at(-1),
    detail: { problems: problems.map((problem) => problem.code) },
  });
}

function consentHolds(study: StudyPicture, { order, rules }: StudySetting, raise: Raise): void {
  const { step } = study;
  const by = study.visit?.booking?.day;
  const filmed = study.films.length > 0;
  const toSeal = step === 'rejected' || step === 'asked' || step === 'imaging' || step === 'ready';
  const lacks = lackOf('study', [study.facts], order.signers, filmed ? undefined : study.consentText, study.centre);
  if ((toSeal || step === 'sealed') && lacks) raise('CONSENT_STUDY_MISSING', { by, detail: lacks });
  const lacksSendAll = lackOfSendAll(study, order);
  if (rules.sendAll && toSeal && lacksSendAll) raise('CONSENT_SEND_ALL_MISSING', { by, detail: lacksSendAll });
}

function lackOfSendAll(study: StudyPicture, order: OrderPicture) {
  const text = study.films.length > 0 ? undefined : order.practiceRules?.sendAllText;
  return lackOf('sendAll', [order.facts, study.facts], order.signers, text);
}

function filmHolds(study: StudyPicture, raise: Raise): void {
  const { step, packages, missing, visit } = study;
  const judging = step === 'imaging' || step === 'ready';
  if (judging && study.unjudged.length > 0) raise('VERDICT_MISSING', { detail: { exposures: study.unjudged.map((film) => film.id) } });
  if (step === 'imaging' || step === 'rejected') raise('VIEWS_MISSING', { by: visit?.booking?.day, detail: { views: missing } });
  if (packages.lastRejection && (judging || step === 'rejected')) raise('FILMS_REJECTED', { detail: { views: packages.rejectedViews } });
}

function sendHolds(study: StudyPicture, { now, order }: StudySetting, raise: Raise): void {
  const { packages, step } = study;
  const supplements = packages.unsent.some((one) => one.supplements !== undefined);
  if (packages.live && (packages.unpacked.length > 0 || supplements)) {
    raise('FILM_NOT_SENT', { detail: { exposures: packages.unpacked.map((film) => film.id) } });
  }
  if (step === 'sealed') raise('NOT_SENT');
  // Once the centre has answered, its base package has arrived whatever the mail said.
  const relevant = packages.uncertain.filter(({ send }) => step === 'sent' || send.package !== packages.live?.package);
  if (study.open && relevant[0]) raise('SEND_UNCERTAIN', { detail: { outcome: relevant[0].outcome } });
  const calling = step === 'sealed' || step === 'sent' || step === 'withCentre' || step === 'appealed';
  const zone = study.centreRules?.calendar.zone ?? 'UTC';
  const closed = closureOn(closuresOf(order, study.centre), localDay(now, zone));
  if (calling && closed) {
    raise('CENTRE_CLOSED', { until: closed.until && addDays(closed.until, 1), detail: { centre: study.centre } });
  }
}

function centreHolds(study: StudyPicture, { now }: StudySetting, chase: Chase | undefined, raise: Raise): void {
  const { step } = study;
  if (step === 'sealed' || step === 'sent' || step === 'withCentre' || step === 'appealed') {
    const causes = causesOf(study);
    if (causes.includes('unpaid')) raise('UNPAID');
    const other = causes.findLast((cause) => cause !== 'unpaid');
    if (other) raise('CAUSE_KNOWN', { detail: { cause: other } });
  }
  if (!chase || !isOverdue(chase, study.centreRules, now)) return;
  raise(chase.clock === 'ack' ? 'NOT_ACKNOWLEDGED' : 'RESULT_OVERDUE', { by: chase.dueDay });
}
