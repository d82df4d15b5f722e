import { sayToOwners } from '../messages/say-to-owner.js';
import { useCase } from '../record/use-case.js';
import { freeSlot } from './hold-slot.js';

/** Nobody came: the people and the room are free, the owner is asked to call, and the studies stay open for another visit. */
export const recordMissed = useCase('recordMissed', async (work, on) => {
  await freeSlot(work.tx, on);
  const booked = work.facts('visitBooked').filter((f) => f.visit === on).at(-1);
  if (booked) {
    const dog = await work.tx.dog.findUniqueOrThrow({ where: { id: work.order.dog }, select: { callName: true } });
    await sayToOwners(work, { once: `missed:${on}`, kind: 'missed', template: 'missed', subject: on, data: { dog: dog.callName, day: booked.day, start: booked.start } });
  }
  return [{ type: 'visitMissed', visit: on }];
});
