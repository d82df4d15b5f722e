import { z } from 'zod';

/** One queue for each kind of resource, so that a slow mail server or a thin line to a centre never holds up the sweeps. */
export const QUEUES = ['send', 'call', 'deliver', 'work', 'sweep'] as const;
export type QueueName = (typeof QUEUES)[number];

/** Ids and small numbers only: a queue is plain text and may be emptied at any time. */
export type IdPayload = z.ZodObject<Record<string, z.ZodType<string | number | undefined>>>;

export interface JobDefinition<Name extends string = string, Payload extends IdPayload = IdPayload> {
  name: Name;
  queue: QueueName;
  payload: Payload;
  retry: { attempts: number; backoffSeconds: number };
  keep: { doneHours: number; failedDays: number };
  /** How often a handler may say "not yet" before the job is given up; 50 when not given. */
  postponeAtMost?: number;
}

export function defineJob<const Name extends string, Payload extends IdPayload>(
  definition: JobDefinition<Name, Payload>,
): JobDefinition<Name, Payload> {
  return Object.freeze(definition);
}

export type PayloadOf<Job> = Job extends JobDefinition<string, infer Payload> ? z.output<Payload> : never;
export type JobNamed<Jobs extends readonly JobDefinition[], Name extends string> = Extract<Jobs[number], { name: Name }>;
