import { isoInstant } from './effective.js';

/** Readings are never more than five minutes apart until the recovery signs are signed. */
const EVERY = 5 * 60_000;

/** When the reading after one at `last` is due; the same text back where it is no time. */
export function readingDueAt(last: string): string {
  const time = Date.parse(last);
  return Number.isNaN(time) ? isoInstant(last) : new Date(time + EVERY).toISOString();
}
