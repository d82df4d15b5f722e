import type { DogOnPaper, LocalDate, Moment } from './snapshots.js';

const MONTHS = [
  'January', 'February', 'March', 'April', 'May', 'June',
  'July', 'August', 'September', 'October', 'November', 'December',
] as const;
const DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

interface Day {
  year: number;
  month: number;
  day: number;
}

function readDay(date: LocalDate): Day {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
  const month = Number(match?.[2]);
  if (!match || month < 1 || month > 12) throw new RangeError(`"${date}" is not a day. Write it as 2026-11-24.`);
  return { year: Number(match[1]), month, day: Number(match[3]) };
}

/** 24 November 2026. No-break spaces keep the day with its month. */
export function dayWords(date: LocalDate): string {
  const { year, month, day } = readDay(date);
  return `${day}\u00a0${MONTHS[month - 1]}\u00a0${year}`;
}

export function weekdayWords(date: LocalDate): string {
  const { year, month, day } = readDay(date);
  return `${DAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()]} ${dayWords(date)}`;
}

export function timeWords(moment: Moment): string {
  const match = /T(\d{2}:\d{2})/.exec(moment);
  if (!match?.[1]) throw new RangeError(`"${moment}" is not a moment. Write it as 2026-11-25T09:40:00+01:00.`);
  return match[1];
}

/** A printed record carries its offset, or an hour that came twice could not be told apart. */
export function momentWords(moment: Moment): string {
  const offset = /(Z|[+-]\d{2}:\d{2})$/.exec(moment)?.[1];
  if (!offset) throw new RangeError(`"${moment}" has no offset. Write it as 2026-11-25T09:40:00+01:00.`);
  return `${dayWords(moment)}, ${timeWords(moment)} (UTC${offset === 'Z' ? '' : offset})`;
}

function monthsBetween(from: Day, to: Day): number {
  return (to.year - from.year) * 12 + to.month - from.month - (to.day < from.day ? 1 : 0);
}

function ageFrom(birth: LocalDate, on: LocalDate): string {
  const from = readDay(birth);
  const to = readDay(on);
  const months = monthsBetween(from, to);
  if (months < 6) {
    const days = (Date.UTC(to.year, to.month - 1, to.day) - Date.UTC(from.year, from.month - 1, from.day)) / 86_400_000;
    return `${Math.floor(days / 7)}\u00a0weeks`;
  }
  if (months < 24) return `${months}\u00a0months`;
  const years = Math.floor(months / 12);
  const rest = months % 12;
  if (rest === 0) return `${years}\u00a0years`;
  return `${years}\u00a0years ${rest}\u00a0${rest === 1 ? 'month' : 'months'}`;
}

/** "13 months", or both ages where the day of birth is only known to lie between two. */
export function ageWords(birth: DogOnPaper['birth'], on: LocalDate): string {
  const youngest = ageFrom(birth.latest, on);
  const oldest = ageFrom(birth.earliest, on);
  return youngest === oldest ? youngest : `between ${youngest} and ${oldest}`;
}

export function birthWords(birth: DogOnPaper['birth']): string {
  if (birth.earliest === birth.latest) return dayWords(birth.earliest);
  return `between ${dayWords(birth.earliest)} and ${dayWords(birth.latest)}`;
}

/** 999 000 001 402 551: grouped by three, as people read it out. */
export function transponderWords(digits: string): string {
  return digits.replace(/\s/g, '').replace(/(.{3})(?=.)/g, '$1\u00a0');
}

export interface Pronouns {
  he: string;
  him: string;
  his: string;
}

export function pronouns(sex: DogOnPaper['sex']): Pronouns {
  if (sex === 'male') return { he: 'he', him: 'him', his: 'his' };
  if (sex === 'female') return { he: 'she', him: 'her', his: 'her' };
  return { he: 'it', him: 'it', his: 'its' };
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a, b and c" */
export function listWords(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
