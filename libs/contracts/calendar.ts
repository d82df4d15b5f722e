import { z } from 'zod';
import { id, localDay, localTime } from './common.js';
import { slot } from './booking.js';

export const calendarAsked = z.object({ day: localDay.optional(), days: z.coerce.number().int().min(1).max(7).default(1) });
export type CalendarAsked = z.output<typeof calendarAsked>;

const named = z.object({ id, name: z.string() });
const calendarVisit = z.object({
  visit: id, order: id, dog: z.string(), studies: z.array(z.string()), step: z.string(),
  /** Only a visit that has not begun may be moved. */
  movable: z.boolean(),
  day: localDay, start: localTime, minutes: z.int(),
  room: named.nullable(), operator: named.nullable(),
});
export type CalendarVisit = z.infer<typeof calendarVisit>;

/** Who and what is occupied when, in one practice. */
export const calendar = z.object({
  today: localDay, zone: z.string(), from: localTime, to: localTime,
  days: z.array(z.object({ day: localDay, open: z.boolean() })),
  rooms: z.array(named),
  operators: z.array(named.extend({ mayTake: z.array(z.object({ study: z.string(), until: localDay })) })),
  visits: z.array(calendarVisit),
});
export type Calendar = z.infer<typeof calendar>;

/** Where somebody thinks of moving a visit to; without a room or operator those it has are kept if they are free. */
export const moveAsked = z.object({ visit: id, day: localDay, start: localTime, room: id.optional(), operator: id.optional() });
export type MoveAsked = z.infer<typeof moveAsked>;

/** The time with everybody it takes, or why it cannot be. Nothing is changed by asking. */
export const moveLook = z.object({ order: id, version: z.int(), slot: slot.nullable(), problems: z.array(z.string()) });
export type MoveLook = z.infer<typeof moveLook>;
