import { ScienceError } from './error.js';
import { type LocalDay, parseDay } from './local-day.js';

/** ISO weekdays that are free: Saturday and Sunday unless a place says otherwise. */
const SATURDAY_SUNDAY = [6, 7];

/**
 * The working day that lies `count` working days after a day; the day itself is not counted.
 * @param count 0 or a whole number above it; 0 gives the day itself, or the next working day if it is free
 * @param holidays local days that are free
 * @throws ScienceError NOT_A_DAY, WORKING_DAYS
 */
export function addWorkingDays(day: LocalDay, count: number, holidays: readonly LocalDay[], freeWeekdays: readonly number[] = SATURDAY_SUNDAY): LocalDay {
  if (!Number.isInteger(count) || count < 0 || count > 3650) throw new ScienceError('WORKING_DAYS', `${count} working days cannot be counted. Enter a whole number from 0 to 3650.`);
  if (new Set(freeWeekdays).size >= 7) throw new ScienceError('WORKING_DAYS', 'A week without a working day has no working days to count.');
  const free = new Set(holidays);
  const isFree = (date: ReturnType<typeof parseDay>) => freeWeekdays.includes(date.dayOfWeek) || free.has(date.toString());
  let date = parseDay(day);
  let left = count;
  while (left > 0 || isFree(date)) {
    date = date.add({ days: 1 });
    if (left > 0 && !isFree(date)) left--;
  }
  return date.toString();
}
