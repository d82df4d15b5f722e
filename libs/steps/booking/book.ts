import { useCase } from '../record/use-case.js';
import type { Stated } from '../record/work.js';
import { lookForTheWaiting } from '../waiting/offer-slots.js';
import { findFitness } from './find-fitness.js';
import { holdSlot } from './hold-slot.js';
import { refuseWhatCannotBe } from './refuse-what-cannot-be.js';
import { sayBooked } from './say-booked.js';
import { slotNames } from './slot-names.js';

/** A first or another slot for a visit, and a new confirmation. Answers, consents and advice stay: moving keeps the visit. */
export const book = useCase('book', async (work, on, input) => {
  const { tx, actor, order } = work;
  const before = work.facts('visitBooked').filter((f) => f.visit === on);
  const advice = work.facts('visitBooked').at(-1)?.detail?.advice;
  const names = await slotNames(tx, input);
  const booked = {
    type: 'visitBooked' as const, visit: on, day: input.day, start: input.start, where: actor.practice, operator: input.operator, room: input.room,
    detail: { ...(advice ? { advice } : {}), ...before.at(-1)?.detail, ...names, nurse: input.nurse, vet: input.vet, minutes: input.minutes },
  };
  const stated: Stated[] = [booked];
  for (const id of work.evaluation.visits[on]?.studies ?? []) {
    const study = work.evaluation.studies[id]!;
    stated.push({ type: 'fitnessChecked', visit: on, study: id, problems: await findFitness(tx, { practice: actor.practice, dog: order.dog, order: order.id, protocol: study.protocol, version: study.version, day: input.day, operator: input.operator }) });
  }
  refuseWhatCannotBe(work, stated);
  await holdSlot(tx, { practice: actor.practice, order: order.id, visit: on, zone: order.rules.practices[actor.practice]!.zone }, input);
  if (before.length > 0) await lookForTheWaiting(tx, actor.practice);
  await sayBooked(work, booked, before.length + 1);
  return stated;
});
