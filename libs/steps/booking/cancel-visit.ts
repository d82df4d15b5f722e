import { useCase } from '../record/use-case.js';
import { sayToOwners } from '../messages/say-to-owner.js';
import { lookForTheWaiting } from '../waiting/offer-slots.js';
import { freeSlot } from './hold-slot.js';

/** The slot is free again at once; the owner is told, unless the owner is who cancelled. */
export const cancelVisit = useCase('cancelVisit', async (work, on, input) => {
  await freeSlot(work.tx, on);
  await lookForTheWaiting(work.tx, work.order.practice);
  const bookings = work.facts('visitBooked').filter((f) => f.visit === on);
  const booked = bookings.at(-1);
  if (booked && input.side === 'practice') {
    const dog = await work.tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
    const { day, start, detail } = booked;
    // The calendar entry goes too: the same entry as in the confirmation, a turn further.
    const data = { dog: dog.callName, day, start, why: input.why, visit: on, zone: work.order.rules.practices[booked.where]?.zone ?? 'UTC', minutes: detail?.minutes ?? 45, sequence: bookings.length };
    await sayToOwners(work, { once: `cancelled:${on}`, kind: 'cancelled', template: 'cancelled', subject: on, data });
  }
  return [{ type: 'visitCancelled', visit: on, side: input.side, why: input.why }];
});
