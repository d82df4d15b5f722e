import type { Slot } from '#libs/contracts/booking';
import { notAccreditedFor } from '#libs/register/practice/accredited';
import type { Protocol } from '#libs/science/protocols/types';
import { instantOf, withOffset } from '../record/local-time.js';
import type { BookingSource, StaffMember } from './booking-source.js';
import { daysFrom, openingHours } from './opening-hours.js';

export type SlotSource = Pick<BookingSource, 'zone' | 'policy' | 'staff' | 'accreditations' | 'equipment' | 'rooms' | 'occupied'>;

export interface SlotsWanted {
  protocols: Protocol[];
  from: string;
  days: number;
  now: Date;
  /** Nobody else is to take the films. */
  operator?: string;
}

/** As many as the number keys of a keyboard reach without looking. */
const MOST = 6;

/**
 * The next times at which a room, an operator who may take all views, a nurse and a vet are all free, each a
 * person of its own. First one in the morning and one in the afternoon of each day; filled up where days are few.
 */
export function findSlots(source: SlotSource, wanted: SlotsWanted): Slot[] {
  const hours = openingHours(source.policy, wanted.from);
  const days: Slot[][] = [];
  for (const day of daysFrom(wanted.from, wanted.days)) {
    if (!hours.isOpen(day) || !isEquipped(source, wanted.protocols, day)) continue;
    days.push(hours.starts.flatMap((start) => slotAt(source, wanted, day, start, hours.slotMinutes) ?? []));
    if (days.flatMap(oneEachHalf).length >= MOST) break;
  }
  const spread = days.flatMap(oneEachHalf).slice(0, MOST);
  const more = days.flat().filter((slot) => !spread.includes(slot)).slice(0, MOST - spread.length);
  return [...spread, ...more].sort((a, b) => `${a.day} ${a.start}`.localeCompare(`${b.day} ${b.start}`));
}

/** All free times of one day: for dogs that come together and follow one another. */
export function slotsOfDay(source: SlotSource, wanted: Omit<SlotsWanted, 'days'>): Slot[] {
  const hours = openingHours(source.policy, wanted.from);
  if (!hours.isOpen(wanted.from) || !isEquipped(source, wanted.protocols, wanted.from)) return [];
  return hours.starts.flatMap((start) => slotAt(source, wanted, wanted.from, start, hours.slotMinutes) ?? []);
}

function oneEachHalf(day: Slot[]): Slot[] {
  return [day.find((s) => s.start < '12:00'), day.find((s) => s.start >= '12:00')].filter((s) => s !== undefined);
}

export const isEquipped = ({ equipment }: SlotSource, protocols: Protocol[], day: string): boolean =>
  protocols.every((p) => p.equipment.every((kind) => equipment.some((e) => e.kind === kind && e.checkedUntil >= day)));

/** Undefined when not everybody and everything is free then. */
export function slotAt(source: SlotSource, { protocols, now, operator }: Pick<SlotsWanted, 'protocols' | 'now' | 'operator'>, day: string, start: string, minutes: number): Slot | undefined {
  const { zone } = source;
  // A time that the clocks skip in spring is no time; of one that comes twice in autumn the first is meant.
  const begins = instantOf(day, start, zone);
  if (!withOffset(begins, zone).startsWith(`${day}T${start}`)) return undefined;
  const from = begins.getTime();
  if (from <= now.getTime()) return undefined;
  const until = from + minutes * 60_000;
  const busy = new Set(source.occupied.filter((o) => o.from < until && o.until > from).map((o) => o.id));
  const room = source.rooms.find((r) => !busy.has(r.id));
  const crew = room && findCrew(source, protocols, day, busy, operator);
  return room && crew && { day, start, minutes, room, ...crew };
}

type Named = Slot['vet'];

/** Radiographers come before vets, so that a vet is left for the sleep. */
function findCrew({ staff, accreditations }: SlotSource, protocols: Protocol[], day: string, busy: Set<string>, wanted: string | undefined): { operator: Named; nurse: Named; vet: Named } | undefined {
  const free = staff.filter((s) => !busy.has(s.id));
  const having = (role: string) => free.filter((s) => s.roles.includes(role));
  const may = ({ id }: StaffMember) => (!wanted || id === wanted) && notAccreditedFor(accreditations, id, protocols, day).length === 0;
  const radiographers = having('radiographer');
  for (const operator of [...radiographers, ...having('vet').filter((v) => !radiographers.includes(v))].filter(may))
    for (const vet of having('vet').filter((v) => v !== operator)) {
      const nurse = having('nurse').find((n) => n !== operator && n !== vet);
      if (nurse) return { operator: named(operator), nurse: named(nurse), vet: named(vet) };
    }
  return undefined;
}

const named = ({ id, name }: StaffMember): Named => ({ id, name });
