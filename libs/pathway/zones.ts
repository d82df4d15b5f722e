import { Temporal } from 'temporal-polyfill';

interface Local { day: string; hour: number }

/** Finding the local time is the one slow thing here, and the same few instants are asked for again and again. */
const cache = new Map<string, Local>();
const CACHE_LIMIT = 5_000;

function local(instant: string, zone: string): Local {
  const key = `${zone} ${instant}`;
  const known = cache.get(key);
  if (known) return known;
  const found = find(instant, zone);
  if (cache.size >= CACHE_LIMIT) cache.clear();
  cache.set(key, found);
  return found;
}

function find(instant: string, zone: string): Local {
  try {
    const time = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
    return { day: time.toPlainDate().toString(), hour: time.hour };
  } catch {
    // An instant or zone that cannot be read is taken as written, in UTC: a stored slip must not stop an order.
    return { day: instant.slice(0, 10), hour: Number(instant.slice(11, 13)) || 0 };
  }
}

export const localDay = (instant: string, zone: string): string => local(instant, zone).day;
export const localHour = (instant: string, zone: string): number => local(instant, zone).hour;

/** The first moment of a local day, ISO in UTC; null where the day or the zone cannot be read. */
export function startOfDay(day: string, zone: string): string | null {
  try {
    const start = Temporal.PlainDate.from(day).toZonedDateTime(zone);
    return new Date(start.epochMilliseconds).toISOString();
  } catch {
    return null;
  }
}

/** When a local hour strikes next after `instant`. */
export function nextHour(instant: string, zone: string, hour: number): string {
  const now = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  const today = now.toPlainDate().toZonedDateTime({ timeZone: zone, plainTime: { hour } });
  const next = Temporal.ZonedDateTime.compare(today, now) > 0 ? today : today.add({ days: 1 });
  return new Date(next.epochMilliseconds).toISOString();
}
