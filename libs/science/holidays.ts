import Holidays from 'date-holidays';
import { ScienceError } from './error.js';
import { type LocalDay, parseDay } from './local-day.js';

/** What a practice or centre writes over the library's list. */
export interface LocalHolidays {
  /** Free here, whatever the library says. */
  free?: LocalDay[];
  /** Worked here, whatever the library says. */
  working?: LocalDay[];
}

/**
 * Public holidays of a region as local days, sorted, each once. A holiday that leaves noon free is a working day.
 * @param region "GB-ENG", "DE-BY", "DE-BY-A" (country, state, region), or null where only the local list counts
 * @throws ScienceError REGION_UNKNOWN, NOT_A_YEAR, NOT_A_DAY
 */
export function holidaysOf(region: string | null, years: number[], local: LocalHolidays = {}): LocalDay[] {
  for (const year of years) {
    if (!Number.isInteger(year) || year < 1970 || year > 2100) throw new ScienceError('NOT_A_YEAR', `Holidays are known for 1970 to 2100, not for ${year}.`);
  }
  const free = (local.free ?? []).map((day) => parseDay(day).toString());
  const working = new Set((local.working ?? []).map((day) => parseDay(day).toString()));
  const days = region === null ? [] : years.flatMap((year) => publicDays(region, year));
  return [...new Set([...days.filter((day) => !working.has(day)), ...free])].sort();
}

function publicDays(region: string, year: number): LocalDay[] {
  return calendarOf(region)
    .getHolidays(year)
    .filter(({ type }) => type === 'public')
    .flatMap(({ date, start, end }) => daysOverNoon(date, end.getTime() - start.getTime()));
}

const DAY = 86_400_000;

/** The library gives the local start as text and the length by two instants. */
function daysOverNoon(localStart: string, length: number): LocalDay[] {
  const [day, clock] = localStart.split(' ');
  const start = Date.parse(`${day}T${clock}Z`);
  const midnight = Date.parse(`${day}T00:00:00Z`);
  const days: LocalDay[] = [];
  for (let noon = midnight + DAY / 2; noon < start + length; noon += DAY) {
    if (noon >= start) days.push(new Date(noon).toISOString().slice(0, 10));
  }
  return days;
}

function calendarOf(region: string): Holidays {
  const [country = '', state, part] = region.split('-');
  const known = new Holidays();
  const states = known.getStates(country) ?? {};
  const parts = state ? (known.getRegions(country, state) ?? {}) : {};
  if (!(country in known.getCountries()) || (state !== undefined && !(state in states)) || (part !== undefined && !(part in parts))) {
    throw new ScienceError('REGION_UNKNOWN', `"${region}" is no region of the holiday list. Write country, state and region as in GB-ENG or DE-BY-A, or use a local list.`);
  }
  return new Holidays(country, state ?? '', part ?? '');
}
