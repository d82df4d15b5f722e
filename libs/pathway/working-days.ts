import { addDays, isWeekend } from './days.js';
import type { Calendar } from './rules.js';

/** Days on which a centre is closed; without an end it is for good and moves no due day. */
export interface Closure { from: string; until?: string }

/** Ten years: a closure that long is not waited out day by day. */
const LIMIT = 3_660;

export function isWorkingDay(day: string, calendar: Calendar, closures: readonly Closure[] = []): boolean {
  if (isWeekend(day) || calendar.holidays.includes(day)) return false;
  return !closures.some((one) => one.until !== undefined && one.from <= day && day <= one.until);
}

/** The working day that lies `count` working days after `day`. */
export function addWorkingDays(day: string, count: number, calendar: Calendar, closures: readonly Closure[] = []): string {
  let found = day;
  let left = count;
  for (let tried = 0; left > 0 && tried < LIMIT; tried += 1) {
    found = addDays(found, 1);
    if (isWorkingDay(found, calendar, closures)) left -= 1;
  }
  return found;
}
