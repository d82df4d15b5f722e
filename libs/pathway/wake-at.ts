import { addDays } from './days.js';
import { isoInstant } from './effective.js';
import type { Evaluation } from './evaluation.js';
import { evaluate } from './evaluate.js';
import type { Fact } from './facts.js';
import type { Rules } from './rules.js';
import { readingDueAt } from './reading-due.js';
import { isOpenVisit } from './steps.js';
import { localDay, startOfDay } from './zones.js';

/**
 * The next moment at which time alone may change a hold, a clock or what is to be done; null when never. It may come
 * a little early, never late: whoever wakes evaluates again.
 */
export function wakeAt(facts: readonly Fact[], now: string, rules: Rules): string | null {
  const instant = isoInstant(now);
  const found = evaluate(facts, instant, rules);
  const zones = zonesOf(found, facts, rules);
  const days = [...facts.filter((fact) => !isOver(found, fact)).flatMap(daysIn), ...daysAhead(found, rules), ...appealEnds(found, facts, rules)];
  const moments = [
    ...zones.flatMap((zone) => nextStart(days, zone, instant) ?? []),
    ...zones.flatMap((zone) => (isChased(found, zone, instant, rules) ? startOfDay(addDays(localDay(instant, zone), 1), zone) ?? [] : [])),
    ...readings(found, facts),
  ];
  return moments.filter((moment) => moment > instant).sort()[0] ?? null;
}

function zonesOf(found: Evaluation, facts: readonly Fact[], rules: Rules): string[] {
  const practices = new Set(facts.flatMap((fact) => (fact.type === 'handedOver' ? [fact.practice, fact.to] : [fact.practice])));
  for (const visit of Object.values(found.visits)) if (visit.where !== undefined) practices.add(visit.where);
  const centres = Object.values(found.studies).map((study) => rules.centres[study.centre]?.calendar.zone);
  const zones = [...[...practices].map((id) => rules.practices[id]?.zone), ...centres, 'UTC'];
  return [...new Set(zones.filter((zone) => zone !== undefined))];
}

/** Time changes nothing more in a visit that has ended. */
const isOver = (found: Evaluation, fact: Fact): boolean => {
  const visit = 'visit' in fact && fact.visit !== undefined ? found.visits[fact.visit] : undefined;
  return visit !== undefined && !isOpenVisit(visit.step);
};

/** Days on which something stated turns from to come to past. */
function daysIn(fact: Fact): string[] {
  switch (fact.type) {
    case 'visitBooked': return [fact.day, addDays(fact.day, 1)];
    case 'visitOpened': return fact.restUntil === undefined ? [] : [fact.restUntil];
    case 'answersJudged': return fact.until === undefined ? [] : [fact.until];
    case 'fitnessChecked': return fact.problems.flatMap((problem) => problem.until ?? []);
    case 'referralOffered': return [addDays(fact.expires, 1)];
    case 'chaseTaken': return [fact.lookAgain];
    case 'centreClosed': return [fact.from, ...(fact.until === undefined ? [] : [addDays(fact.until, 1)])];
    default: return [];
  }
}

const A_DAY = /^\d{4}-\d{2}-\d{2}$/;

function daysAhead(found: Evaluation, rules: Rules): string[] {
  const things = [found.order, ...Object.values(found.visits), ...Object.values(found.studies)];
  const terms = things.flatMap((thing) => thing.holds).flatMap((hold) => [hold.by, hold.until]);
  const chases = Object.values(found.studies)
    .filter((study) => rules.centres[study.centre] !== undefined)
    .flatMap(({ chase }) => (chase ? [addDays(chase.dueDay, 1), chase.nextDay] : []));
  return [...terms.filter((term) => term !== undefined), ...chases].filter((day) => A_DAY.test(day));
}

function appealEnds(found: Evaluation, facts: readonly Fact[], rules: Rules): string[] {
  return facts.flatMap((fact) => {
    if (fact.type !== 'letterReleased') return [];
    const centre = rules.centres[found.studies[fact.study]?.centre ?? ''];
    return centre ? [addDays(localDay(fact.at, centre.calendar.zone), centre.appealDays + 1)] : [];
  });
}

/** Once a reminder is due, each new day may be a working day or not. */
function isChased(found: Evaluation, zone: string, now: string, rules: Rules): boolean {
  return Object.values(found.studies).some(({ chase, centre }) =>
    chase !== undefined && rules.centres[centre]?.calendar.zone === zone && localDay(now, zone) >= chase.nextDay);
}

function nextStart(days: string[], zone: string, now: string): string | null {
  const today = localDay(now, zone);
  const next = days.filter((day) => day > today).sort()[0];
  return next === undefined ? null : startOfDay(next, zone);
}

function readings(found: Evaluation, facts: readonly Fact[]): string[] {
  const awaited = Object.values(found.visits).filter((visit) => visit.step === 'sedated' || visit.step === 'imaged');
  const ids = new Set(awaited.map((visit) => visit.id));
  return facts.flatMap((fact) =>
    ((fact.type === 'readingTaken' || fact.type === 'sedationStarted') && ids.has(fact.visit) ? [readingDueAt(fact.at)] : []));
}
