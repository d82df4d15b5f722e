import type { JobDefinition, JobNamed, PayloadOf } from './job-definition.js';

type When = { everySeconds: number } | { cron: string; timeZone: string };

/** One entry of the one list of everything that happens by the clock. */
export type Schedule<Jobs extends readonly JobDefinition[]> = {
  [Name in Jobs[number]['name']]: { id: string; job: Name; payload: PayloadOf<JobNamed<Jobs, Name>> } & When;
}[Jobs[number]['name']];

export function repeatOptions(when: When): { every: number } | { pattern: string; tz: string } {
  return 'cron' in when ? { pattern: when.cron, tz: when.timeZone } : { every: when.everySeconds * 1000 };
}
