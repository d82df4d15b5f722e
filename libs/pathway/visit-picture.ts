import type { Bag } from './bag.js';
import type { CollectedVisit } from './collect.js';
import type { Fact, FactOf } from './facts.js';
import type { OrderPicture } from './order-picture.js';
import type { PracticeRules, Rules } from './rules.js';
import { isOpenVisit, type VisitStep } from './steps.js';
import type { Film } from './film.js';

export interface VisitPicture {
  id: string;
  facts: Bag;
  step: VisitStep;
  why: string | undefined;
  since: string;
  open: boolean;
  /** Pictures may still be taken in it. */
  ahead: boolean;
  booking: FactOf<'visitBooked'> | undefined;
  practiceRules: PracticeRules | undefined;
  zone: string;
  /** Listed and not left out. */
  studies: string[];
  films: Film[];
}

export function pictureVisit(visit: CollectedVisit, order: OrderPicture, films: Film[], rules: Rules): VisitPicture {
  const { facts } = visit;
  const booking = facts.last('visitBooked');
  const { step, by, why } = stepOf(visit, order);
  const practiceRules = rules.practices[booking?.where ?? order.practice] ?? order.practiceRules;
  const leftOut = new Set(facts.all('studyLeftOut').map((fact) => fact.study));
  return {
    id: visit.id, facts, step, why, booking, practiceRules,
    since: by.at,
    open: isOpenVisit(step),
    ahead: step === 'wanted' || step === 'booked' || step === 'admitted' || step === 'sedated',
    zone: practiceRules?.zone ?? 'UTC',
    studies: [...new Set(visit.opened.studies)].filter((study) => !leftOut.has(study)),
    films: films.filter((film) => film.visit === visit.id),
  };
}

interface Reached { step: VisitStep; by: Fact; why?: string }

/** The furthest thing that happened, unless the visit has ended. */
function stepOf(visit: CollectedVisit, order: OrderPicture): Reached {
  const reached = furthest(visit);
  if (!isOpenVisit(reached.step)) return reached;
  if (order.died) return { step: 'died', by: order.died };
  const notHereYet = reached.step === 'wanted' || reached.step === 'booked';
  if (notHereYet && order.cancelled) return { step: 'cancelled', by: order.cancelled, why: 'order' };
  return reached;
}

function furthest({ facts, opened }: CollectedVisit): Reached {
  const home = facts.first('wentHome');
  const sheet = facts.first('sheetGiven');
  const recovery = facts.first('recoverySigned');
  const ended = facts.first('imagingEnded');
  const sedation = facts.first('sedationStarted');
  if (home && sheet && recovery) return { step: 'home', by: home };
  if (recovery) return { step: 'recovered', by: recovery };
  if (ended) return { step: 'imaged', by: ended, why: ended.how };
  // Once asleep, a dog must come through recovery: no end counts before it.
  if (sedation) return { step: 'sedated', by: sedation };
  const away = facts.first('turnedAway');
  if (away) return { step: 'turnedAway', by: away, why: away.why };
  if (home) return { step: 'home', by: home, why: 'notSedated' };
  const admitted = facts.first('admitted');
  if (admitted) return { step: 'admitted', by: admitted };
  const cancelled = facts.first('visitCancelled');
  if (cancelled) return { step: 'cancelled', by: cancelled, why: cancelled.why };
  const missed = facts.first('visitMissed');
  if (missed) return { step: 'missed', by: missed };
  const booked = facts.last('visitBooked');
  return booked ? { step: 'booked', by: booked } : { step: 'wanted', by: opened };
}
