import { Temporal } from 'temporal-polyfill';
import { ScienceError } from './error.js';

/** A calendar day where the dog is, without time or zone: "2026-11-24". */
export type LocalDay = string;

/**
 * @throws ScienceError NOT_A_DAY when the text is not an existing day written YYYY-MM-DD
 */
export function parseDay(text: string): Temporal.PlainDate {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) {
    try {
      return Temporal.PlainDate.from(text, { overflow: 'reject' });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
  throw new ScienceError('NOT_A_DAY', `"${text}" is not a day. Write it as year-month-day, for example 2026-11-24.`);
}
