import type { Temporal } from 'temporal-polyfill';
import { ScienceError } from './error.js';
import { type LocalDay, parseDay } from './local-day.js';
import type { AgeException, Protocol, Youngest } from './protocols/types.js';

export interface Birth {
  earliest: LocalDay;
  latest: LocalDay;
  precision: 'day' | 'month' | 'year' | 'estimate';
}

export interface Age {
  /** Whole days lived. */
  days: number;
  /** Whole months, by calendar; a dog born on the 31st turns a month older on the last day of a shorter month. */
  months: number;
}

export type AgeAnswer =
  | { ok: true; age: Age }
  | { ok: false; tooYoung: { earliestDate: LocalDay; daysShort: number; youngest: Youngest } };

/**
 * What is known of a birth written as a day, a month or a year: "2025-10-03", "2025-10", "2025".
 * @throws ScienceError NOT_A_BIRTH_DATE
 */
export function birthFrom(text: string): Birth {
  const [, year, month, day] = /^(\d{4})(?:-(\d{2}))?(?:-(\d{2}))?$/.exec(text) ?? [];
  if (!year || Number(month ?? 1) < 1 || Number(month ?? 1) > 12) {
    throw new ScienceError('NOT_A_BIRTH_DATE', `"${text}" is not a birth date. Write a day (2025-10-03), a month (2025-10) or a year (2025).`);
  }
  if (day) return { earliest: parseDay(text).toString(), latest: text, precision: 'day' };
  const first = parseDay(`${year}-${month ?? '01'}-01`);
  const last = first.add(month ? { months: 1 } : { years: 1 }).subtract({ days: 1 });
  return { earliest: first.toString(), latest: last.toString(), precision: month ? 'month' : 'year' };
}

/**
 * Age on a local day of a dog born on a known day.
 * @throws ScienceError NOT_A_DAY, BORN_LATER
 */
export function ageOn(birthDay: LocalDay, day: LocalDay): Age {
  const born = parseDay(birthDay);
  const on = parseDay(day);
  const days = born.until(on, { largestUnit: 'days' }).days;
  if (days < 0) throw notYetBorn(birthDay, day);
  const upper = (on.year - born.year) * 12 + on.month - born.month;
  return { days, months: isAtLeast(born, { months: upper }, on) ? upper : upper - 1 };
}

function notYetBorn(birthDay: LocalDay, day: LocalDay): ScienceError {
  return new ScienceError('BORN_LATER', `The dog was not yet born on ${day}: its birth date is ${birthDay}. Correct one of the two.`);
}

function isAtLeast(born: Temporal.PlainDate, age: Youngest, on: Temporal.PlainDate): boolean {
  return born.add(age).since(on, { largestUnit: 'days' }).days <= 0;
}

const sameBreed = (a: string, b: string) => fold(a) === fold(b);
const fold = (breed: string) => breed.normalize('NFC').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/**
 * The youngest age of a breed under a protocol.
 * @param schemeRows rows that a scheme adds for its own breeds; they come before the protocol's
 */
export function youngestFor(protocol: Protocol, breed: string, schemeRows: AgeException[] = []): Youngest {
  const row = [...schemeRows, ...protocol.olderBreeds].find(({ breeds }) => breeds.some((name) => sameBreed(name, breed)));
  return row?.youngest ?? protocol.youngest;
}

/**
 * Whether a dog may be X-rayed under a protocol on a local day. The latest day it may have been
 * born on counts, so that a vague birth date never makes a dog older than it is.
 * @param day day of exposure where the dog is
 * @throws ScienceError NOT_A_DAY, BIRTH_ORDER, BORN_LATER
 */
export function oldEnough(protocol: Protocol, breed: string, birth: Birth, day: LocalDay, schemeRows: AgeException[] = []): AgeAnswer {
  const born = parseDay(birth.latest);
  if (parseDay(birth.earliest).since(born, { largestUnit: 'days' }).days > 0) {
    throw new ScienceError('BIRTH_ORDER', `The earliest birth date ${birth.earliest} lies after the latest, ${birth.latest}. Swap or correct them.`);
  }
  if (day < birth.earliest) throw notYetBorn(birth.earliest, parseDay(day).toString());
  const youngest = youngestFor(protocol, breed, schemeRows);
  const earliest = born.add(youngest);
  const daysShort = parseDay(day).until(earliest, { largestUnit: 'days' }).days;
  if (daysShort <= 0) return { ok: true, age: ageOn(birth.latest, day) };
  return { ok: false, tooYoung: { earliestDate: earliest.toString(), daysShort, youngest } };
}
