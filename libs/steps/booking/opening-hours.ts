import { z } from 'zod';
import { localDay, localTime } from '#libs/contracts/common';
import { addDays } from '#libs/pathway/days';
import { holidaysOf } from '#libs/science/holidays';

const policy = z.object({
  hours: z
    .object({
      from: localTime.default('08:00'),
      to: localTime.default('16:00'),
      /** 1 is Monday. */
      days: z.array(z.int().min(1).max(7)).default([1, 2, 3, 4, 5]),
      slotMinutes: z.int().min(15).max(240).default(45),
    })
    .prefault({}),
  region: z.string().nullish(),
  holidays: z.array(localDay).default([]),
});

export interface OpeningHours {
  slotMinutes: number;
  /** Local times at which a visit may start; it is over before the practice closes. */
  starts: string[];
  isOpen(day: string): boolean;
}

/** When a practice takes visits, as its policy says. */
export function openingHours(stored: unknown, from: string): OpeningHours {
  const { hours, region, holidays } = policy.parse(stored ?? {});
  const year = Number(from.slice(0, 4));
  const closed = new Set(holidaysOf(region ?? null, [year, year + 1], { free: holidays }));
  const starts: string[] = [];
  for (let at = minutes(hours.from); at + hours.slotMinutes <= minutes(hours.to); at += hours.slotMinutes) starts.push(clock(at));
  return { slotMinutes: hours.slotMinutes, starts, isOpen: (day) => hours.days.includes(weekday(day)) && !closed.has(day) };
}

export const daysFrom = (first: string, count: number): string[] => Array.from({ length: count }, (_, i) => addDays(first, i));

const weekday = (day: string): number => new Date(`${day}T00:00:00Z`).getUTCDay() || 7;
const minutes = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
const clock = (at: number): string => `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
