import type { z } from 'zod';
import { ScienceError } from '#libs/science/error';
import { parseDay } from '#libs/science/local-day';
import { t } from '#libs/words/spoken';
import { badInput, notFound, StepError } from './refusal.js';

type Issue = z.core.$ZodIssue;

/** What the contract says, or a sentence for every field that is not. */
export function parseInput<S extends z.ZodType>(schema: S, input: unknown): z.output<S> {
  const parsed = schema.safeParse(input);
  if (!parsed.success) throw new StepError('BAD_INPUT', undefined, { fields: parsed.error.issues.map(nearest).map((i) => ({ path: i.path.join('.'), message: i.message })) });
  refuseUnwritable(parsed.data, []);
  return parsed.data;
}

/** Of the ways in which a field could be meant, the one that got furthest says what is wrong. */
function nearest(issue: Issue): Issue {
  if (issue.code !== 'invalid_union') return issue;
  const inner = issue.errors.flatMap((branch) => branch.slice(0, 1)).map(nearest).sort((a, b) => b.path.length - a.path.length)[0];
  return inner ? { ...inner, path: [...issue.path, ...inner.path] } : issue;
}

/** The database keeps no zero sign; a scanner or a damaged file may send one. */
function refuseUnwritable(value: unknown, path: string[]): void {
  if (typeof value === 'string' && value.includes('\0')) throw badInput(path.join('.'), t('This holds a sign that cannot be kept. Type it again.'));
  if (value !== null && typeof value === 'object') for (const [key, inner] of Object.entries(value)) refuseUnwritable(inner, [...path, key]);
}

const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

/** An id that cannot be one is answered like an id that is not there. */
export function knownId(id: unknown): string {
  if (typeof id !== 'string' || !ID.test(id)) throw notFound();
  return id;
}

/** What science refuses, said beside the field that it was typed in. */
export function asField<T>(path: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof ScienceError) throw badInput(path, t.said(error.said));
    throw error;
  }
}

/** A day that exists. */
export const existingDay = (path: string, day: string): string => asField(path, () => parseDay(day).toString());

/** An existing day that has come. */
export function pastDay(path: string, day: string, today: string): string {
  if (existingDay(path, day) > today) throw badInput(path, t('{day} is still to come; today is {today}. Write a day up to today.', { day, today }));
  return day;
}

/** As a date column wants it. */
export const asDate = (day: string): Date => new Date(`${day}T00:00:00Z`);
