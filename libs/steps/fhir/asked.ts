import { datesChanges, searchParameters } from '#libs/fhir/capability-statement';
import type { FhirType, Told } from '#libs/fhir/resources';
import { badInput } from '../record/step-error.js';

/** From and up to when something was last changed, ISO in UTC; the end is not included. */
export interface Changed { from?: string; before?: string }

export function inTime({ meta }: Told, { from, before }: Changed): boolean {
  const at = meta?.lastUpdated ?? '';
  return (!from || at >= from) && (!before || at < before);
}

export interface Asked {
  type: FhirType;
  id?: string;
  /** A dog's id. */
  patient?: string;
  identifier?: string;
  changed: Changed;
  count: number;
  after?: string;
  /** Names of what is not searched by. */
  ignored: string[];
  /** What was understood, for the link to this page and the next. */
  used: [string, string][];
}

const PAGE = { usual: 50, most: 200 };
const ID = /^[A-Za-z0-9\-.]{1,64}$/;

/** @throws StepError BAD_INPUT where a parameter is known and cannot be meant */
export function askedOf(type: FhirType, query: Record<string, string | string[] | undefined>): Asked {
  const asked: Asked = { type, changed: {}, count: PAGE.usual, ignored: [], used: [] };
  const known: readonly string[] = ['_id', ...searchParameters[type], ...(datesChanges(type) ? ['_lastUpdated'] : [])];
  for (const [name, given] of Object.entries(query)) {
    const values = [given ?? ''].flat();
    if (name === '_format' || name === '_pretty') continue;
    if (name !== '_count' && name !== 'after' && !known.includes(name)) {
      asked.ignored.push(name);
      continue;
    }
    if (values.length > 1 && name !== '_lastUpdated') throw badInput(name, `${name} was given ${values.length} times. Give it once.`);
    for (const value of values) {
      take(asked, name, value);
      if (name !== 'after') asked.used.push([name, value]);
    }
  }
  return asked;
}

function take(asked: Asked, name: string, value: string): void {
  if (name === '_count') asked.count = countOf(value);
  else if (name === 'after') asked.after = value;
  else if (name === '_lastUpdated') narrow(asked.changed, value);
  else if (name === 'identifier') asked.identifier = value.slice(value.lastIndexOf('|') + 1).trim();
  else {
    const id = name === '_id' ? value : value.replace(/^(https?:\/\/.*\/)?Patient\//, '');
    if (!ID.test(id)) throw badInput(name, `${name} is one id${name === '_id' ? '' : ', such as Patient/…'}.`);
    if (name === '_id') asked.id = id;
    else asked.patient = id;
  }
}

function countOf(value: string): number {
  if (!/^\d{1,6}$/.test(value) || Number(value) === 0) throw badInput('_count', `_count is a number from 1; at most ${PAGE.most} come at once.`);
  return Math.min(Number(value), PAGE.most);
}

const DATE = /^(eq|ge|gt|le|lt)?(\d{4}-\d{2}-\d{2})(T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2}))?$/;

/** A day is all of it, in UTC; an instant is as exact as it is written, to the millisecond. */
function narrow(changed: Changed, value: string): void {
  const [, prefix = 'eq', day, time] = DATE.exec(value.replace(' ', '+')) ?? [];
  const start = Date.parse(time ? `${day}${time}` : `${day}T00:00:00Z`);
  if (!day || Number.isNaN(start)) throw badInput('_lastUpdated', '_lastUpdated is a day or an instant, such as ge2026-11-25 or ge2026-11-25T09:00:00Z.');
  const end = start + (time ? 1 : 86_400_000);
  const iso = (at: number) => new Date(at).toISOString();
  const from = { eq: start, ge: start, gt: end }[prefix];
  const before = { eq: end, le: end, lt: start }[prefix];
  if (from !== undefined && (!changed.from || iso(from) > changed.from)) changed.from = iso(from);
  if (before !== undefined && (!changed.before || iso(before) < changed.before)) changed.before = iso(before);
}
