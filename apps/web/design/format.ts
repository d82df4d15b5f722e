import { languages, type Language } from '#libs/words/languages';
import { figureWords } from '#libs/words/translator';
import { t } from '../words/t.js';

const dayOf = (day: string) => new Date(`${day}T12:00:00Z`);
const formats = new Map<string, Intl.DateTimeFormat>();

/** As whoever reads the page writes days and times. */
function written(date: Date, options: Intl.DateTimeFormatOptions, read: Language = t.language): string {
  const key = read + JSON.stringify(options);
  const format = formats.get(key) ?? new Intl.DateTimeFormat(languages[read].dates, options);
  formats.set(key, format);
  // British English closes off the weekday with a comma in some versions of the data and not in others.
  return read === 'en' ? format.format(date).replace(',', '') : format.format(date);
}

/** Wednesday 25 November; Mittwoch, 25. November */
export const longDay = (day: string, read: Language = t.language) => written(dayOf(day), { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' }, read);
/** 25 November 2026; 25. November 2026 */
export const fullDay = (day: string, read: Language = t.language) => written(dayOf(day), { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }, read);
/** Wed 25 Nov */
export const shortDay = (day: string) => written(dayOf(day), { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });

export const addDays = (day: string, days: number) => new Date(dayOf(day).getTime() + days * 86_400_000).toISOString().slice(0, 10);

/** The calendar day of an instant at the practice. */
export const dayAt = (instant: string, zone: string) =>
  new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeZone: zone }).format(new Date(instant));

/** 09:15, at the practice */
export const timeAt = (instant: string, zone: string) =>
  written(new Date(instant), { hour: '2-digit', minute: '2-digit', timeZone: zone });

/** 25 November, 09:15 */
export const momentAt = (instant: string, zone: string, read: Language = t.language) =>
  `${written(new Date(instant), { day: 'numeric', month: 'long', timeZone: zone }, read)}, ${timeAt(instant, zone)}`;

/** 328.64, without the currency: its word stands once beside the column. */
export const amount = (minor: number, read: Language = t.language) => (minor / 100).toLocaleString(languages[read].dates, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
export const money = (minor: number, currency: string, read: Language = t.language) => `${currency} ${amount(minor, read)}`;

/** "one, two and three" */
export const list = (words: readonly string[]) => new Intl.ListFormat(languages[t.language].dates).format(words);
/** "German", "Deutsch": a language by the name that the reader gives it. */
export const languageName = (code: Language) => new Intl.DisplayNames(languages[t.language].dates, { type: 'language' }).of(code) ?? languages[code].name;
export const plural = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
/** Closes a line of words that came without a full stop. */
export const sentence = (words: string) => (/[.!?…]”?$/.test(words) ? words : `${words}.`);
/** A knot's moment: the time when it was on the day of the line, else the day; words stay words. */
export function knotMoment(at: string, zone: string, lineDay: string | undefined): string {
  if (!/^\d{4}-\d{2}-\d{2}T/.test(at)) return at;
  const day = dayAt(at, zone);
  if (day === lineDay) return timeAt(at, zone);
  return written(dayOf(day), { day: 'numeric', month: 'short', timeZone: 'UTC' });
}

/** 999 000 001 402 551, as on paper; older numbers stay as they are. */
export const transponder = (digits: string) => (/^\d{15}$/.test(digits) ? digits.match(/\d{3}/g)!.join('\u00a0') : digits);

/** A name inside a sentence: small in English; German nouns keep their capital. */
export const inside = (words: string) => (t.language === 'en' ? words.toLowerCase() : words);

export const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** A number with so many decimals and the decimal sign of whoever reads; what rounds to nothing has no minus. */
export const fixed = (value: number, decimals: number, read: Language = t.language) => figureWords(read, { number: Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value, decimals, unit: '' });
/** A number with as many decimals as it has, and the decimal sign of whoever reads. */
export const plain = (value: number, read: Language = t.language) => value.toLocaleString(languages[read].dates, { maximumFractionDigits: 6, useGrouping: false });
/** 1,240 dogs; 1.240 Hunde */
export const whole = (value: number, read: Language = t.language) => Math.round(value).toLocaleString(languages[read].dates);
