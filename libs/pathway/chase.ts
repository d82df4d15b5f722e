import type { Chase } from './evaluation.js';
import type { Cause, ClockName, FactOf } from './facts.js';
import type { OrderPicture } from './order-picture.js';
import type { CentreRules } from './rules.js';
import type { StudyPicture } from './study-picture.js';
import { addWorkingDays, type Closure, isWorkingDay } from './working-days.js';
import { localDay } from './zones.js';

/** The clock that runs for a study, and what is to be done today; undefined where nobody is waited for. */
export function chaseOf(study: StudyPicture, order: OrderPicture, now: string): Chase | undefined {
  const running = clockOf(study);
  const centre = study.centreRules;
  if (!running || !centre) return undefined;
  const { calendar } = centre;
  const closures = closuresOf(order, study.centre);
  const today = localDay(now, calendar.zone);
  const days = running.clock === 'ack' ? centre.ackDays : centre.resultDays;
  const dueDay = addWorkingDays(localDay(running.since, calendar.zone), days, calendar, closures);
  const reminders = study.facts.all('chaseSent').filter((fact) => fact.clock === running.clock && fact.at >= running.since);
  const lastDay = reminders.map((fact) => fact.day).sort().at(-1);
  const nextDay = lastDay === undefined
    ? addWorkingDays(dueDay, 1, calendar, closures)
    : addWorkingDays(lastDay, centre.remindEvery, calendar, closures);
  const cause = causesOf(study).at(-1);
  const taken = study.facts.latest('chaseTaken', (fact) => fact.at >= running.since);
  const act = actOf({
    paused: isPaused(study, order), urgent: cause !== undefined || isClosedForGood(closures, today),
    due: today >= nextDay, worn: reminders.length >= centre.reminders, working: isWorkingDay(today, calendar, closures),
    taken, today,
  });
  return {
    ...running, dueDay, nextDay, act,
    sent: reminders.length,
    ...(cause ? { cause } : {}),
    ...(taken ? { person: taken.person } : {}),
  };
}

export const isOverdue = (chase: Chase | undefined, centre: CentreRules | undefined, now: string): boolean =>
  chase !== undefined && centre !== undefined && localDay(now, centre.calendar.zone) > chase.dueDay;

export const closuresOf = (order: OrderPicture, centre: string): Closure[] =>
  order.facts.all('centreClosed').filter((fact) => fact.centre === centre);

export function closureOn(closures: readonly Closure[], day: string): Closure | undefined {
  return closures.find((one) => one.from <= day && (one.until === undefined || day <= one.until));
}

const isClosedForGood = (closures: readonly Closure[], day: string): boolean =>
  closures.some((one) => one.until === undefined && one.from <= day);

/** Causes still known, for the present centre. */
export function causesOf(study: StudyPicture): Cause[] {
  const known = new Set<Cause>();
  for (const found of study.facts.after('causeFound', study.centreChanged)) {
    const cleared = study.facts.after('causeCleared', found).some((fact) => fact.cause === found.cause);
    if (!cleared) known.add(found.cause);
  }
  return [...known];
}

function clockOf(study: StudyPicture): { clock: ClockName; since: string } | undefined {
  const { step, packages, letters } = study;
  if (step === 'sent' && packages.sent) return { clock: 'ack', since: packages.sent.at };
  if (step === 'withCentre' && packages.acknowledged) return { clock: 'result', since: packages.acknowledged.at };
  if (step === 'appealed' && letters.appeal) return { clock: 'result', since: letters.appeal.at };
  return undefined;
}

/** Death and harm pause what is done, not what is counted. */
function isPaused(study: StudyPicture, order: OrderPicture): boolean {
  const undecided = order.died !== undefined && !study.facts.has('afterDeathDecided');
  return order.silentFor.death || order.silentFor.harm || undecided;
}

interface Situation {
  paused: boolean; urgent: boolean; due: boolean; worn: boolean; working: boolean;
  taken: FactOf<'chaseTaken'> | undefined; today: string;
}

function actOf({ paused, urgent, due, worn, working, taken, today }: Situation): Chase['act'] {
  if (paused) return 'none';
  if (taken && today < taken.lookAgain) return 'withPerson';
  if (urgent || (due && (worn || taken))) return 'escalate';
  return due && working ? 'remind' : 'none';
}
