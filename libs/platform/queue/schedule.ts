import { getNextMillis } from 'bullmq';
import type { JobDefinition, JobNamed, PayloadOf } from './job-definition.js';

type When = { everySeconds: number } | { cron: string; timeZone: string };

/** One entry of the one list of everything that happens by the clock. */
export type Schedule<Jobs extends readonly JobDefinition[]> = {
  [Name in Jobs[number]['name']]: { id: string; job: Name; payload: PayloadOf<JobNamed<Jobs, Name>> } & When;
}[Jobs[number]['name']];

export function repeatOptions(when: When): { every: number } | { pattern: string; tz: string } {
  return 'cron' in when ? { pattern: when.cron, tz: when.timeZone } : { every: when.everySeconds * 1000 };
}

const SLACK_MS = 60_000;

/** Its next turn lies further off than it can: it was set before the clock was put back, and would wait until that time comes round again. */
export function isStranded(next: number | undefined, when: When, now: number): boolean {
  const latest = 'cron' in when ? getNextMillis(now, repeatOptions(when)) : now + when.everySeconds * 1000;
  return next !== undefined && latest !== undefined && next > latest + SLACK_MS;
}
