import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import type { Tx } from '#libs/platform/database/db';
import { findProtocol } from '#libs/science/protocols/catalogue';
import { BOOKING, type BookingSource, type Occupied } from '../booking/booking-source.js';
import { slotsOfDay } from '../booking/find-slots.js';
import { fitOfStudy } from '../booking/fit-of-study.js';
import { daysFrom } from '../booking/opening-hours.js';
import { instantOf } from '../record/local-time.js';
import type { Work } from '../record/work.js';
import { PREPARE_DAYS, type OfferedSlot, type WaitingRow } from './waiting-rows.js';

/** How far ahead times are looked for, for a visit that has none yet. */
const MOST_DAYS = 60;

export interface Looking { practice: string; now: Date; refused: { day: string; start: string }[]; offered: OfferedSlot[] }

/** The first free time before the one that the visit has: not one that was refused, nor one that is offered to somebody. */
export async function earlierTime(tx: Tx, work: Work, entry: WaitingRow, { practice, now, refused, offered }: Looking): Promise<OfferedSlot | undefined> {
  const visit = work.evaluation.visits[entry.visitId];
  const protocols = (visit?.studies ?? []).flatMap((id) => work.evaluation.studies[id] ?? []).flatMap((s) => findProtocol(s.protocol, s.version) ?? []);
  const [source] = await tx.$queryRawUnsafe<BookingSource[]>(BOOKING, practice, 'queue', 'queue', work.order.dog, now);
  if (!source || protocols.length === 0) return undefined;
  source.occupied.push(...offered.flatMap((o) => occupiedBy(o, source.zone)));
  const soonest = addDays(localDay(now.toISOString(), source.zone), PREPARE_DAYS);
  const from = entry.fromDay && entry.fromDay > soonest ? entry.fromDay : soonest;
  for (const day of daysFrom(from, MOST_DAYS)) {
    if (visit?.day && day >= visit.day) return undefined;
    if (protocols.some((p) => fitOfStudy(source, p, day).problems.length > 0)) continue;
    const slot = slotsOfDay(source, { protocols, from: day, now }).find((s) => !refused.some((r) => r.day === s.day && r.start === s.start));
    if (slot) return { day, start: slot.start, minutes: slot.minutes, room: slot.room.id, operator: slot.operator.id, nurse: slot.nurse.id, vet: slot.vet.id };
  }
  return undefined;
}

function occupiedBy({ day, start, minutes, room, operator, nurse, vet }: OfferedSlot, zone: string): Occupied[] {
  const from = instantOf(day, start, zone).getTime();
  return [room, operator, nurse, vet].map((id) => ({ id, from, until: from + minutes * 60_000 }));
}
