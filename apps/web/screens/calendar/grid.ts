import type { CalendarVisit } from '#libs/contracts/calendar';

/** Visits are moved by quarters of an hour. */
export const STEP = 15;

export const minutesOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
export const timeOf = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

export interface Hours { from: number; to: number }

/** What is drawn begins and ends with a full hour, and holds every visit, also one outside the hours of today. */
export function hoursShown(from: string, to: string, visits: readonly Pick<CalendarVisit, 'start' | 'minutes'>[]): Hours {
  const starts = [minutesOf(from), ...visits.map((v) => minutesOf(v.start))];
  const ends = [minutesOf(to), ...visits.map((v) => minutesOf(v.start) + v.minutes)];
  return { from: Math.floor(Math.min(...starts) / 60) * 60, to: Math.min(24 * 60, Math.ceil(Math.max(...ends) / 60) * 60) };
}

/** The quarter of an hour nearest to a place in the column, such that the visit stays in it. */
export function startAt(y: number, pixelsPerMinute: number, { from, to }: Hours, minutes: number): number {
  const at = Math.round((from + y / pixelsPerMinute) / STEP) * STEP;
  return Math.min(Math.max(at, from), to - minutes);
}

export interface Laid<T> { visit: T; lane: number; lanes: number }

/** Visits at the same time stand side by side: each in the first lane that is free, all of a bunch equally wide. */
export function sideBySide<T extends { start: string; minutes: number }>(visits: readonly T[]): Laid<T>[] {
  const laid: Laid<T>[] = [];
  let bunch: Laid<T>[] = [];
  let ends: number[] = [];
  const close = () => {
    for (const one of bunch) one.lanes = ends.length;
    laid.push(...bunch);
    [bunch, ends] = [[], []];
  };
  for (const visit of [...visits].sort((a, b) => a.start.localeCompare(b.start))) {
    const start = minutesOf(visit.start);
    if (ends.every((end) => end <= start)) close();
    const free = ends.findIndex((end) => end <= start);
    const lane = free < 0 ? ends.length : free;
    ends[lane] = start + visit.minutes;
    bunch.push({ visit, lane, lanes: 0 });
  }
  close();
  return laid;
}
