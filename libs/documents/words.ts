import type { Language } from '#libs/words/languages';
import { wordsOnPaper } from '#libs/words/words';
import type { DogOnPaper, LocalDate, Moment } from './snapshots.js';

/** Written out here and not asked of the machine: the same snapshot gives the same words on every one. */
const CALENDAR = {
  en: {
    months: ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'],
    days: ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'],
    afterDay: '',
    afterWeekday: '',
  },
  de: {
    months: ['Januar', 'Februar', 'März', 'April', 'Mai', 'Juni', 'Juli', 'August', 'September', 'Oktober', 'November', 'Dezember'],
    days: ['Sonntag', 'Montag', 'Dienstag', 'Mittwoch', 'Donnerstag', 'Freitag', 'Samstag'],
    afterDay: '.',
    afterWeekday: ',',
  },
} as const;

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
export function dayWords(date: LocalDate, language: Language = 'en'): string {
  const { year, month, day } = readDay(date);
  const { months, afterDay } = CALENDAR[language];
  return `${day}${afterDay}\u00a0${months[month - 1]}\u00a0${year}`;
}

export function weekdayWords(date: LocalDate, language: Language = 'en'): string {
  const { year, month, day } = readDay(date);
  const { days, afterWeekday } = CALENDAR[language];
  return `${days[new Date(Date.UTC(year, month - 1, day)).getUTCDay()]}${afterWeekday} ${dayWords(date, language)}`;
}

export function timeWords(moment: Moment): string {
  const match = /T(\d{2}:\d{2})/.exec(moment);
  if (!match?.[1]) throw new RangeError(`"${moment}" is not a moment. Write it as 2026-11-25T09:40:00+01:00.`);
  return match[1];
}

/** A printed record carries its offset, or an hour that came twice could not be told apart. */
export function momentWords(moment: Moment, language: Language = 'en'): string {
  const offset = /(Z|[+-]\d{2}:\d{2})$/.exec(moment)?.[1];
  if (!offset) throw new RangeError(`"${moment}" has no offset. Write it as 2026-11-25T09:40:00+01:00.`);
  return wordsOnPaper(language)('{day}, {time} (UTC{offset})', { day: dayWords(moment, language), time: timeWords(moment), offset: offset === 'Z' ? '' : offset });
}

function monthsBetween(from: Day, to: Day): number {
  return (to.year - from.year) * 12 + to.month - from.month - (to.day < from.day ? 1 : 0);
}

function ageFrom(birth: LocalDate, on: LocalDate, language: Language): string {
  const t = wordsOnPaper(language);
  const from = readDay(birth);
  const to = readDay(on);
  const months = monthsBetween(from, to);
  if (months < 6) {
    const days = (Date.UTC(to.year, to.month - 1, to.day) - Date.UTC(from.year, from.month - 1, from.day)) / 86_400_000;
    return t('{weeks}\u00a0weeks', { weeks: Math.floor(days / 7) });
  }
  if (months < 24) return t('{months}\u00a0months', { months });
  const [years, rest] = [Math.floor(months / 12), months % 12];
  return rest === 0 ? t('{years}\u00a0years', { years }) : t('{years}\u00a0years {months, plural, one {#\u00a0month} other {#\u00a0months}}', { years, months: rest });
}

/** "13 months", or both ages where the day of birth is only known to lie between two. */
export function ageWords(birth: DogOnPaper['birth'], on: LocalDate, language: Language = 'en'): string {
  const youngest = ageFrom(birth.latest, on, language);
  const oldest = ageFrom(birth.earliest, on, language);
  return youngest === oldest ? youngest : wordsOnPaper(language)('between {from} and {to}', { from: youngest, to: oldest });
}

export function birthWords(birth: DogOnPaper['birth'], language: Language = 'en'): string {
  if (birth.earliest === birth.latest) return dayWords(birth.earliest, language);
  return wordsOnPaper(language)('between {from} and {to}', { from: dayWords(birth.earliest, language), to: dayWords(birth.latest, language) });
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

const AND = { en: ' and ', de: ' und ' } as const;

/** "a, b and c" */
export function listWords(items: readonly string[], language: Language = 'en'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')}${AND[language]}${items.at(-1)}`;
}
