import { randomUUID } from 'node:crypto';
import { QUEUES, type JobDefinition, type JobNamed, type PayloadOf, type QueueName } from './job-definition.js';
import type { JobRegistry } from './job-registry.js';
import type { BullQueue, QueueConnection } from './queue-connection.js';
import { isStranded, repeatOptions, type Schedule } from './schedule.js';

export interface AddOptions {
  /**
   * What the job is about. While a job with the same name and key waits, is put off or is tried again, another is not
   * added; while one runs, exactly one more is kept for afterwards. Finished jobs never stand in the way.
   */
  key?: string;
  /** For short waits only: the day on which something is due stands in the database. */
  delaySeconds?: number;
}

export type QueueCounts = Record<QueueName, { waiting: number; active: number; delayed: number; failed: number }>;

const KEY = /^[A-Za-z0-9._:-]{1,128}$/;

export class JobQueue<const Jobs extends readonly JobDefinition[]> {
  readonly #registry: JobRegistry<Jobs>;
  readonly #queues: Record<QueueName, BullQueue>;

  constructor(registry: JobRegistry<Jobs>, connection: QueueConnection, onError: (error: Error) => void) {
    this.#registry = registry;
    this.#queues = Object.fromEntries(QUEUES.map((name) => [name, connection.openQueue(name)])) as Record<QueueName, BullQueue>;
    for (const queue of Object.values(this.#queues)) queue.on('error', onError);
  }

  async ready(): Promise<void> {
    await Promise.all(Object.values(this.#queues).map((queue) => queue.waitUntilReady()));
  }

  add<Name extends Jobs[number]['name']>(name: Name, payload: PayloadOf<JobNamed<Jobs, Name>>, options: AddOptions = {}): Promise<void> {
    return this.relay(name, payload, options);
  }

  /** As `add`, for a name and a payload that come from a stored row; both are checked here. */
  async relay(name: string, payload: unknown, options: AddOptions = {}): Promise<void> {
    const { key, delaySeconds } = options;
    const job = this.#registry.get(name);
    const data = this.#registry.parse(name, payload);
    if (key !== undefined && !KEY.test(key)) throw new RangeError(`The key of job "${name}" must be letters, digits, dots, colons, hyphens and underscores.`);
    await this.#queues[job.queue].add(name, data, {
      ...runOptions(job),
      ...(delaySeconds ? { delay: Math.round(delaySeconds * 1000) } : {}),
      // an id of its own: the PostgreSQL backend would otherwise make a sequence, which the worker's login may not
      jobId: randomUUID(),
      // the jobId would not do for this: as long as the finished job is retained, a second add is silently ignored
      ...(key ? { deduplication: { id: `${name}.${key.replaceAll(':', '.')}`, keepLastIfActive: true } } : {}),
    });
  }

  /** Makes the queue's schedules equal to the list; may be called again and again, and after the queue was emptied. */
  async schedule(list: readonly Schedule<Jobs>[]): Promise<void> {
    if (new Set(list.map((entry) => entry.id)).size < list.length) throw new Error('Two schedules have the same id.');
    for (const name of QUEUES) {
      const queue = this.#queues[name];
      const wanted = list.filter((entry) => this.#registry.get(entry.job).queue === name);
      const present = new Map((await queue.getJobSchedulers()).map((scheduler) => [scheduler.key, scheduler]));
      for (const key of present.keys()) if (!wanted.some((entry) => entry.id === key)) await queue.removeJobScheduler(key);
      for (const entry of wanted) {
        const repeat = repeatOptions(entry);
        const data = this.#registry.parse(entry.job as string, entry.payload);
        const old = present.get(entry.id);
        const same =
          old?.name === entry.job &&
          JSON.stringify(old.template?.data ?? {}) === JSON.stringify(data) &&
          ('every' in repeat ? old.every === repeat.every : old.pattern === repeat.pattern && old.tz === repeat.tz);
        const stranded = isStranded(old?.next, entry, Date.now());
        // set over the old one it would still count from that one's next turn
        if (stranded) await queue.removeJobScheduler(entry.id);
        // setting an unchanged one again would push its next turn back
        if (!same || stranded) await queue.upsertJobScheduler(entry.id, repeat, { name: entry.job, data, opts: turnOptions(this.#registry.get(entry.job)) });
      }
    }
  }

  async counts(): Promise<QueueCounts> {
    const rows = await Promise.all(
      QUEUES.map(async (name) => {
        const { waiting = 0, active = 0, delayed = 0, failed = 0 } = await this.#queues[name].getJobCounts('waiting', 'active', 'delayed', 'failed');
        return [name, { waiting, active, delayed, failed }] as const;
      }),
    );
    return Object.fromEntries(rows) as QueueCounts;
  }

  async close(): Promise<void> {
    await Promise.all(Object.values(this.#queues).map((queue) => queue.close()));
  }
}

/** A turn is named by its moment, which comes again when the clock is put back: a done one left lying would stand in the way. */
const turnOptions = (job: JobDefinition) => ({ ...runOptions(job), removeOnComplete: true });

function runOptions(job: JobDefinition) {
  return {
    attempts: job.retry.attempts,
    backoff: { type: 'exponential', delay: job.retry.backoffSeconds * 1000, jitter: 0.5 },
    removeOnComplete: { age: job.keep.doneHours * 3600, count: 10_000 },
    removeOnFail: { age: job.keep.failedDays * 86_400, count: 10_000 },
    sizeLimit: 2048,
    stackTraceLimit: 5,
  };
}
