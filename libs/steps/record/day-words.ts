const written = new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const short = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** "Wednesday, 25 November 2026". */
export const dayWords = (day: string): string => written.format(new Date(`${day}T00:00:00Z`)).replace(/^(\w+) /, '$1, ');
/** "25 November 2026". */
export const shortDay = (day: string): string => short.format(new Date(`${day}T00:00:00Z`));
