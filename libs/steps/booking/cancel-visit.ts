import { dayWords } from '../record/day-words.js';
import { useCase } from '../record/use-case.js';
import { sayToOwners } from '../messages/say-to-owner.js';
import { freeSlot } from './hold-slot.js';

/** The slot is free again at once; the owner is told, unless the owner is who cancelled. */
export const cancelVisit = useCase('cancelVisit', async (work, on, input) => {
  await freeSlot(work.tx, on);
  const booked = work.facts('visitBooked').filter((f) => f.visit === on).at(-1);
  if (booked && input.side === 'practice') {
    const dog = await work.tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
    await sayToOwners(work, { once: `cancelled:${on}`, kind: 'cancelled', template: 'cancelled', subject: on, data: { dog: dog.callName, dayWords: dayWords(booked.day), start: booked.start, why: input.why, visit: on } });
  }
  return [{ type: 'visitCancelled', visit: on, side: input.side, why: input.why }];
});
