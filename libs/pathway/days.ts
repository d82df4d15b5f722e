import { Temporal } from 'temporal-polyfill';

const DAY = 86_400_000;
const number = (day: string): number => Date.parse(`${day}T00:00:00Z`) / DAY;
const text = (n: number): string => new Date(n * DAY).toISOString().slice(0, 10);

/** A day that cannot be read stays as it is: the caller must not fall over a stored slip. */
export function addDays(day: string, days: number): string {
  const n = number(day);
  return Number.isNaN(n) ? day : text(n + days);
}

export function addMonths(day: string, months: number): string {
  return Number.isNaN(number(day)) ? day : Temporal.PlainDate.from(day).add({ months }).toString();
}

export function daysBetween(from: string, to: string): number {
  const days = number(to) - number(from);
  return Number.isNaN(days) ? 0 : days;
}

export function isWeekend(day: string): boolean {
  const weekday = new Date(`${day}T00:00:00Z`).getUTCDay();
  return weekday === 0 || weekday === 6;
}
