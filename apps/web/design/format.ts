/** How days, times, money and numbers are written on the screen. */
const language = 'en-GB';

const dayOf = (day: string) => new Date(`${day}T12:00:00Z`);
const written = (options: Intl.DateTimeFormatOptions) => {
  const format = new Intl.DateTimeFormat(language, options);
  return (date: Date) => format.format(date);
};

const long = written({ weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' });
const full = written({ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const short = written({ weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });

/** Wednesday 25 November */
export const longDay = (day: string) => long(dayOf(day)).replace(',', '');
/** 25 November 2026 */
export const fullDay = (day: string) => full(dayOf(day));
/** Wed 25 Nov */
export const shortDay = (day: string) => short(dayOf(day)).replace(',', '');

export const addDays = (day: string, days: number) => new Date(dayOf(day).getTime() + days * 86_400_000).toISOString().slice(0, 10);

/** The calendar day of an instant at the practice. */
export const dayAt = (instant: string, zone: string) =>
  new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeZone: zone }).format(new Date(instant));

/** 09:15, at the practice */
export const timeAt = (instant: string, zone: string) =>
  new Intl.DateTimeFormat(language, { hour: '2-digit', minute: '2-digit', timeZone: zone }).format(new Date(instant));

/** 25 November, 09:15 */
export const momentAt = (instant: string, zone: string) =>
  `${new Intl.DateTimeFormat(language, { day: 'numeric', month: 'long', timeZone: zone }).format(new Date(instant))}, ${timeAt(instant, zone)}`;

/** 328.64, without the currency: its word stands once beside the column. */
export const amount = (minor: number) => (minor / 100).toLocaleString(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
export const money = (minor: number, currency: string) => `${currency} ${amount(minor)}`;

/** "one, two and three" */
export const list = (words: readonly string[]) => new Intl.ListFormat(language).format(words);
export const plural = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
/** Closes a line of words that came without a full stop. */
export const sentence = (words: string) => (/[.!?…]”?$/.test(words) ? words : `${words}.`);
/** A knot's moment: the time when it was on the day of the line, else the day; words stay words. */
export function knotMoment(at: string, zone: string, lineDay: string | undefined): string {
  if (!/^\d{4}-\d{2}-\d{2}T/.test(at)) return at;
  const day = dayAt(at, zone);
  if (day === lineDay) return timeAt(at, zone);
  return new Intl.DateTimeFormat(language, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(dayOf(day));
}

/** 999 000 001 402 551, as on paper; older numbers stay as they are. */
export const transponder = (digits: string) => (/^\d{15}$/.test(digits) ? digits.match(/\d{3}/g)!.join('\u00a0') : digits);

export const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);
