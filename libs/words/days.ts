import { languages, type Language } from './languages.js';

const formats = new Map<string, Intl.DateTimeFormat>();

function format(language: Language, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = language + JSON.stringify(options);
  const made = formats.get(key) ?? new Intl.DateTimeFormat(languages[language].dates, options);
  formats.set(key, made);
  return made;
}

const dayOf = (day: string): Date => new Date(`${day}T00:00:00Z`);

/** "Wednesday, 25 November 2026", "Mittwoch, 25. November 2026". */
export const longDay = (language: Language, day: string): string =>
  format(language, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(dayOf(day)).replace(/^(\p{L}+) /u, '$1, ');

/** "25 November 2026", "25. November 2026". */
export const shortDay = (language: Language, day: string): string => format(language, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(dayOf(day));

/** "25 November 2026, 14:05", by the clocks of a zone. */
export const moment = (language: Language, instant: string, zone: string): string =>
  ['day', 'time'].map((part) => format(language, part === 'day' ? { day: 'numeric', month: 'long', year: 'numeric', timeZone: zone } : { hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone: zone }).format(new Date(instant))).join(', ');

/** "a, b and c", "a, b und c". */
export const listed = (language: Language, items: readonly string[]): string => new Intl.ListFormat(languages[language].dates).format(items);
