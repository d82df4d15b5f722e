import { Temporal } from 'temporal-polyfill';

/** The instant of a local day and time; a time that the clock skips in spring is taken as the one after. */
export function instantOf(day: string, time: string, zone: string): Date {
  return new Date(Temporal.PlainDateTime.from(`${day}T${time}`).toZonedDateTime(zone).epochMilliseconds);
}

/** With the zone's own offset, as it is printed: 2026-11-25T09:40:00+01:00. */
export function withOffset(at: string | Date, zone: string): string {
  return Temporal.Instant.from(typeof at === 'string' ? at : at.toISOString()).toZonedDateTimeISO(zone).toString({ timeZoneName: 'never', smallestUnit: 'second' });
}
