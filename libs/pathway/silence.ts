import { closuresOf } from './chase.js';
import type { Evaluation, Hold } from './evaluation.js';
import { evaluate } from './evaluate.js';
import type { Fact } from './facts.js';
import { type Picture, pictureOf } from './picture.js';
import { addDays } from './days.js';
import type { Reachable, Rules } from './rules.js';
import type { StudyPicture } from './study-picture.js';
import { isWorkingDay } from './working-days.js';
import { localDay, localHour } from './zones.js';

export type MessageKind =
  | 'result' | 'correction' | 'filmsRejected' | 'missingViews' | 'bill' | 'confirmation' | 'reminder' | 'preparation'
  | 'consentLink' | 'survey' | 'goingHome' | 'centreClosed' | 'chase';

export interface Message {
  kind: MessageKind;
  /** The person it goes to; for a chase the centre. */
  to: string;
  visit?: string;
  study?: string;
  result?: string;
}

export type SilenceReason =
  | 'DEATH' | 'HARM' | 'ERASED' | 'NOT_ADDRESSEE' | 'BY_POST' | 'ADDRESSEE_TO_CONFIRM' | 'VISIT_OVER' | 'ALREADY_ANSWERED'
  | 'SUPERSEDED' | 'HELD' | 'WITHDRAWN' | 'NOTHING_TO_CORRECT' | 'NIGHT' | 'NOBODY_REACHABLE' | 'CLOCK_STOPPED' | 'CENTRE_NOT_WORKING'
  | 'DIGEST_SENT_TODAY';

/** Keep: ask again at the next sweep. Drop: never send it. */
export type MaySend = { send: true } | { send: false; reason: SilenceReason; then: 'keep' | 'drop' };

interface Situation {
  message: Message;
  picture: Picture;
  evaluation: Evaluation;
  study: StudyPicture | undefined;
  rules: Rules;
  now: string;
}

interface Silence {
  reason: SilenceReason;
  then: 'keep' | 'drop';
  kinds: readonly MessageKind[];
  when: (situation: Situation) => boolean;
}

const letters = ['result', 'correction', 'filmsRejected', 'missingViews'] as const;
const beforeVisit = ['confirmation', 'reminder', 'preparation', 'consentLink'] as const;
const toOwner = [...letters, ...beforeVisit, 'bill', 'survey', 'goingHome', 'centreClosed'] as const;

/** The first that fits decides. Asked in the same transaction that claims the row to send. */
const silences: readonly Silence[] = [
  { reason: 'DEATH', then: 'keep', kinds: [...letters, 'bill', 'chase'], when: ({ evaluation: { order }, picture }) => order.silent && picture.order.silentFor.death },
  { reason: 'DEATH', then: 'drop', kinds: [...beforeVisit, 'survey', 'goingHome', 'centreClosed'], when: ({ picture }) => picture.order.died !== undefined },
  { reason: 'HARM', then: 'keep', kinds: [...toOwner.filter((kind) => kind !== 'goingHome'), 'chase'], when: ({ picture }) => picture.order.silentFor.harm },
  { reason: 'ERASED', then: 'drop', kinds: toOwner, when: ({ message, picture }) => picture.order.erased.has(message.to) },
  { reason: 'NOT_ADDRESSEE', then: 'drop', kinds: letters, when: (situation) => addressee(situation) === undefined },
  { reason: 'BY_POST', then: 'drop', kinds: [...letters, 'bill', 'survey'], when: (situation) => (addressee(situation)?.channel ?? 'mail') !== 'mail' },
  { reason: 'ADDRESSEE_TO_CONFIRM', then: 'keep', kinds: [...letters, 'bill'], when: ({ evaluation }) => evaluation.order.holds.some((hold) => hold.code === 'ADDRESSEE_TO_CONFIRM') },
  { reason: 'VISIT_OVER', then: 'drop', kinds: beforeVisit, when: isVisitOver },
  { reason: 'ALREADY_ANSWERED', then: 'drop', kinds: ['consentLink'], when: isAnswered },
  { reason: 'SUPERSEDED', then: 'drop', kinds: ['result'], when: ({ study, message }) => study?.results.accepted !== undefined && study.results.accepted.result.result !== message.result },
  { reason: 'HELD', then: 'keep', kinds: ['result'], when: isHeld },
  { reason: 'WITHDRAWN', then: 'drop', kinds: ['result'], when: ({ study }) => study?.results.accepted === undefined || study.step === 'ended' },
  { reason: 'NOTHING_TO_CORRECT', then: 'drop', kinds: ['correction'], when: ({ study }) => !study || study.results.withdrawn.length === 0 },
  { reason: 'NIGHT', then: 'keep', kinds: ['result', 'correction', 'filmsRejected', 'bill', 'survey', 'reminder'], when: isNight },
  { reason: 'NOBODY_REACHABLE', then: 'keep', kinds: ['result', 'correction', 'filmsRejected'], when: isBeforeSilentDay },
  { reason: 'CLOCK_STOPPED', then: 'drop', kinds: ['chase'], when: (situation) => chase(situation) === undefined },
  { reason: 'CENTRE_NOT_WORKING', then: 'keep', kinds: ['chase'], when: isCentreClosed },
  { reason: 'DIGEST_SENT_TODAY', then: 'keep', kinds: ['chase'], when: isChasedToday },
  { reason: 'CLOCK_STOPPED', then: 'drop', kinds: ['chase'], when: (situation) => chase(situation)?.act !== 'remind' },
];

export function maySend(message: Message, facts: readonly Fact[], now: string, rules: Rules): MaySend {
  const picture = pictureOf(facts, rules);
  const study = picture.studies.find((one) => one.id === message.study);
  const situation = { message, picture, study, rules, now, evaluation: evaluate(facts, now, rules) };
  const silence = silences.find(({ kinds, when }) => kinds.includes(message.kind) && when(situation));
  return silence ? { send: false, reason: silence.reason, then: silence.then } : { send: true };
}

function addressee({ picture, message }: Situation) {
  return picture.order.addressees.find((one) => one.person === message.to);
}

function isVisitOver({ picture, message }: Situation): boolean {
  const visit = picture.visits.find((one) => one.id === message.visit);
  if (!visit) return message.visit !== undefined;
  return visit.step !== 'wanted' && visit.step !== 'booked' && !(message.kind === 'consentLink' && visit.step === 'admitted');
}

const consents = new Set(['CONSENT_SEDATION_MISSING', 'EMERGENCY_WISHES_MISSING', 'CONSENT_STUDY_MISSING', 'CONSENT_SEND_ALL_MISSING']);

function isAnswered({ evaluation, message }: Situation): boolean {
  const visit = evaluation.visits[message.visit ?? ''];
  const studies = (visit?.studies ?? [message.study ?? '']).flatMap((id) => evaluation.studies[id]?.holds ?? []);
  return ![...(visit?.holds ?? []), ...studies].some((hold) => consents.has(hold.code));
}

function isHeld({ evaluation, message }: Situation): boolean {
  const holds: Hold[] = [...evaluation.order.holds, ...(evaluation.studies[message.study ?? '']?.holds ?? [])];
  return holds.some((hold) => hold.forbids.includes('releaseAgain'));
}

function isNight({ picture, now, message }: Situation): boolean {
  const quiet = picture.order.practiceRules?.quiet;
  if (!quiet || picture.order.anyTime.has(message.to)) return false;
  const hour = localHour(now, picture.order.zone);
  return quiet.from > quiet.to ? hour >= quiet.from || hour < quiet.to : hour >= quiet.from && hour < quiet.to;
}

/** Whoever reads a letter in the evening has questions the next day: somebody of the practice must be there then. */
function isBeforeSilentDay({ picture, now, message }: Situation): boolean {
  const reachable = picture.order.practiceRules?.reachable;
  if (!reachable || picture.order.anyTime.has(message.to)) return false;
  const today = localDay(now, picture.order.zone);
  return [today, addDays(today, 1)].some((day) => !isReachable(day, reachable));
}

const isReachable = (day: string, { weekdays, closed }: Reachable): boolean =>
  weekdays.includes(new Date(`${day}T00:00:00Z`).getUTCDay() || 7) && !closed.includes(day);

function chase({ evaluation, message }: Situation) {
  return evaluation.studies[message.study ?? '']?.chase;
}

function centreToday({ study, now }: Situation): string {
  return localDay(now, study?.centreRules?.calendar.zone ?? 'UTC');
}

function isCentreClosed(situation: Situation): boolean {
  const { study, picture } = situation;
  if (!study?.centreRules) return false;
  return !isWorkingDay(centreToday(situation), study.centreRules.calendar, closuresOf(picture.order, study.centre));
}

function isChasedToday(situation: Situation): boolean {
  return situation.study?.facts.all('chaseSent').some((fact) => fact.day === centreToday(situation)) ?? false;
}
