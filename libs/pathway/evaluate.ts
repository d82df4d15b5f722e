import type { Action, ActionRow } from './actions.js';
import { isoInstant } from './effective.js';
import type { Evaluation, Hold, OrderStanding, Standing, StudyStanding, VisitStanding } from './evaluation.js';
import type { Fact } from './facts.js';
import type { HoldCode } from './hold-codes.js';
import { orderActions } from './order-actions.js';
import { orderHolds } from './order-holds.js';
import type { OrderPicture } from './order-picture.js';
import { stepOfOrder } from './order-step.js';
import { type Picture, pictureOf } from './picture.js';
import type { Rules } from './rules.js';
import { studyActions } from './study-actions.js';
import { studyHolds } from './study-holds.js';
import type { StudyPicture } from './study-picture.js';
import { visitActions } from './visit-actions.js';
import { visitHolds } from './visit-holds.js';
import type { VisitPicture } from './visit-picture.js';

/** Where an order, its visits and its studies stand, what holds them and what can be done next. */
export function evaluate(facts: readonly Fact[], now: string, rules: Rules): Evaluation {
  const instant = isoInstant(now);
  const picture = pictureOf(facts, rules);
  const { order, visits, studies } = picture;

  const held = studies.map((study) => ({
    picture: study, ...studyHolds(study, { order, all: studies, rules, now: instant }),
  }));
  const heldVisits = visits.map((visit) => ({
    visit, holds: visitHolds(visit, order, held.filter((one) => visit.studies.includes(one.picture.id)), instant),
  }));
  const ownHolds = picture.opened ? orderHolds(order, studies, visits) : [];

  const visitEntries = heldVisits.map(({ visit, holds }): [string, VisitStanding] =>
    [visit.id, standVisit(visit, order, studies, holds, ownHolds)]);
  const studyEntries = held.map(({ picture: study, holds, chase }): [string, StudyStanding] => {
    const around = heldVisits.filter(({ visit }) => weighsOn(visit, study)).flatMap((one) => one.holds);
    const offered = offers(studyActions, { study, order, now: instant, holds: codes(holds) });
    const standing = standStudy(study, holds, weigh(offered, [...ownHolds, ...around, ...holds]));
    return [study.id, chase ? { ...standing, chase } : standing];
  });
  const everything = [...ownHolds, ...heldVisits.flatMap((one) => one.holds), ...held.flatMap((one) => one.holds)];
  return {
    order: standOrder(picture, ownHolds, everything),
    visits: Object.fromEntries(visitEntries),
    studies: Object.fromEntries(studyEntries),
  };
}

/** A visit weighs on the studies that it lists while it is open, and on those whose films it holds. */
const weighsOn = (visit: VisitPicture, study: StudyPicture): boolean =>
  (visit.open && visit.studies.includes(study.id)) || visit.films.some((film) => film.serves.includes(study.id));

const codes = (holds: Hold[]): Set<HoldCode> => new Set(holds.map((hold) => hold.code));

function offers<Situation>(rows: Record<string, ActionRow<Situation>>, situation: Situation): Action[] {
  return Object.entries(rows).filter(([, row]) => row.offered(situation)).map(([action]) => action as Action);
}

/** An offered action is allowed exactly when no hold forbids it. */
function weigh(offered: Action[], holds: Hold[]): Pick<Standing<unknown>, 'next' | 'refused'> {
  const refused: Partial<Record<Action, HoldCode[]>> = {};
  const next = offered.filter((action) => {
    const because = [...codes(holds.filter((hold) => hold.forbids.includes(action)))].sort();
    if (because.length > 0) refused[action] = because;
    return because.length === 0;
  });
  return { next: next.sort(), refused };
}

const why = (reason: string | undefined): { why?: string } => (reason === undefined ? {} : { why: reason });

function standVisit(
  visit: VisitPicture, order: OrderPicture, studies: StudyPicture[], holds: Hold[], ownHolds: Hold[],
): VisitStanding {
  const openStudies = studies.filter((study) => study.open && visit.studies.includes(study.id)).length;
  const booking = visit.booking;
  return {
    id: visit.id, step: visit.step, ...why(visit.why), since: visit.since, holds,
    ...weigh(offers(visitActions, { visit, order, openStudies }), [...ownHolds, ...holds]),
    ...(booking ? { day: booking.day, start: booking.start, where: booking.where, room: booking.room } : {}),
    studies: visit.studies,
  };
}

function standStudy(study: StudyPicture, holds: Hold[], weighed: ReturnType<typeof weigh>): StudyStanding {
  const { id, step, since, protocol, version, centre, missing } = study;
  return { id, step, ...why(study.why), since, holds, ...weighed, protocol, version, centre, missing };
}

function standOrder({ order, studies, visits, facts, ignored }: Picture, holds: Hold[], everything: Hold[]): OrderStanding {
  const { step, since } = stepOfOrder(order, studies, visits);
  const offered = offers(orderActions, { order, step, studies, holds: codes(holds) });
  const { frozenAt } = order;
  return {
    id: order.id, step, since, holds,
    ...weigh(offered, holds),
    allHolds: [...codes(everything)].sort(),
    silent: order.silentFor.death || order.silentFor.harm,
    frozen: frozenAt !== null,
    legalHold: order.legalHold,
    imagedNotSent: studies.filter(isImagedNotSent).map((study) => study.id).sort(),
    statistics: order.statistics,
    ignored,
    late: frozenAt === null ? [] : facts.filter((fact) => fact.at < frozenAt && frozenAt < fact.rec).map((fact) => fact.id),
  };
}

/** Counted for the scheme lead; only sending empties it, or films that turn out not to be this study's. */
const isImagedNotSent = (study: StudyPicture): boolean =>
  !study.packages.everSent && study.served.some((film) => !film.disowned);
