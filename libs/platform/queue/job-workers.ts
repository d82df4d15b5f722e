import { setTimeout as pause } from 'node:timers/promises';
import { DelayedError, UnrecoverableError, type Job } from 'bullmq';
import { QUEUES, type JobDefinition, type JobNamed, type PayloadOf, type QueueName } from './job-definition.js';
import { PermanentError } from './job-errors.js';
import { fateOf } from './job-fate.js';
import type { JobRegistry } from './job-registry.js';
import type { BullWorker, JobData, QueueConnection } from './queue-connection.js';

export interface Run {
  id: string;
  name: string;
  /** 1 for the first attempt. */
  attempt: number;
  lastAttempt: boolean;
  /** Aborted when the program must stop now or another worker may have taken the job over. */
  signal: AbortSignal;
}

export interface EndedJob {
  id: string;
  name: string;
  payload: JobData;
  attempt: number;
}

export type Handler<Payload> = (payload: Payload, run: Run) => Promise<void>;

export interface JobWorkersOptions {
  /** Called before a job is left as failed for good; when it throws, the job comes back instead. May be called twice. */
  onGaveUp: (job: EndedJob, error: Error) => Promise<void>;
  onDone?: (job: EndedJob) => Promise<void>;
  onError: (error: Error) => void;
  concurrency?: Partial<Record<QueueName, number>>;
  /** A job of a killed worker comes back after at most the lock plus the check. */
  lockSeconds?: number;
  stalledCheckSeconds?: number;
  /** How many killed workers one job may have before it is given up. */
  killedAtMost?: number;
}

const CONCURRENCY: Record<QueueName, number> = { send: 4, call: 4, deliver: 2, work: 4, sweep: 1 };
const UNRECORDED_COMES_BACK_MS = 30_000;
const RUNS_AGAIN_MS = 1000;

export class JobWorkers<const Jobs extends readonly JobDefinition[]> {
  readonly #registry: JobRegistry<Jobs>;
  readonly #connection: QueueConnection;
  readonly #options: JobWorkersOptions;
  readonly #handlers = new Map<string, Handler<never>>();
  readonly #workers: BullWorker[] = [];
  /** Failures that the processor has reported itself; the others are found by the "failed" event. */
  readonly #reported = new WeakSet<object>();
  readonly #reporting = new Set<Promise<void>>();
  #closing = false;

  constructor(registry: JobRegistry<Jobs>, connection: QueueConnection, options: JobWorkersOptions) {
    this.#registry = registry;
    this.#connection = connection;
    this.#options = options;
  }

  handle<Name extends Jobs[number]['name']>(name: Name, handler: Handler<PayloadOf<JobNamed<Jobs, Name>>>): this {
    if (!this.#registry.jobs.some((job) => job.name === name)) throw new Error(`A handler was given for "${name}", which is no job.`);
    if (this.#handlers.has(name)) throw new Error(`The job "${name}" has two handlers.`);
    this.#handlers.set(name, handler);
    return this;
  }

  async start(): Promise<void> {
    const missing = this.#registry.jobs.filter((job) => !this.#handlers.has(job.name)).map((job) => job.name);
    if (missing.length) throw new Error(`No handler for: ${missing.join(', ')}.`);
    for (const name of QUEUES) {
      const worker = this.#connection.openWorker(name, (job, token, signal) => this.#run(job, token, signal), {
        concurrency: this.#options.concurrency?.[name] ?? CONCURRENCY[name],
        lockDuration: (this.#options.lockSeconds ?? 15) * 1000,
        stalledInterval: (this.#options.stalledCheckSeconds ?? 5) * 1000,
        maxStalledCount: this.#options.killedAtMost ?? 3,
      });
      worker.on('error', this.#options.onError);
      worker.on('lockRenewalFailed', (ids) => ids.forEach((id) => worker.cancelJob(id, 'another worker may have taken this job over')));
      worker.on('failed', (job, error) => this.#onFailedOutside(job, error));
      this.#workers.push(worker);
    }
    await Promise.all(this.#workers.map((worker) => worker.waitUntilReady()));
    for (const worker of this.#workers) void this.#keepRunning(worker);
  }

  /**
   * Takes no more jobs and waits for the running ones, but not for ever. After the limit they are told to stop and
   * false is returned: the caller then ends the process, and another worker takes the jobs over.
   */
  async close(limitSeconds: number): Promise<boolean> {
    this.#closing = true;
    const finished = Promise.all(this.#workers.map((worker) => worker.close()))
      .then(() => Promise.all(this.#reporting))
      .then(() => true);
    let timer: NodeJS.Timeout | undefined;
    const limit = new Promise<false>((resolve) => (timer = setTimeout(() => resolve(false), limitSeconds * 1000)));
    const inTime = await Promise.race([finished, limit]);
    clearTimeout(timer);
    if (!inTime) {
      for (const worker of this.#workers) worker.cancelAllJobs('the program is stopping');
      finished.catch(this.#options.onError);
    }
    return inTime;
  }

  /** The library's loop ends at an error that it cannot place, such as one of a database that is only just starting. */
  async #keepRunning(worker: BullWorker): Promise<void> {
    while (!this.#closing) {
      try {
        return await worker.run();
      } catch (error) {
        this.#options.onError(new Error('A worker of the queue ended by itself; it runs again.', { cause: error }));
      }
      await pause(RUNS_AGAIN_MS);
    }
  }

  async #run(job: Job<JobData, void>, token: string | undefined, signal: AbortSignal | undefined): Promise<void> {
    const ended: EndedJob = { id: job.id ?? '', name: job.name, payload: job.data, attempt: job.attemptsMade + 1 };
    const attempts = job.opts.attempts ?? 1;
    try {
      const handler = this.#handlers.get(job.name);
      if (!handler) throw new PermanentError(`No job is named "${job.name}" in this version of the program.`);
      await handler(this.#registry.parse(job.name, job.data) as never, {
        id: ended.id,
        name: job.name,
        attempt: ended.attempt,
        lastAttempt: ended.attempt >= attempts,
        signal: signal ?? new AbortController().signal,
      });
      await this.#options.onDone?.(ended);
    } catch (error) {
      await this.#afterError(job, token, ended, error);
    }
  }

  /** Always throws: what it throws tells the queue what to do with the job. */
  async #afterError(job: Job<JobData, void>, token: string | undefined, ended: EndedJob, error: unknown): Promise<never> {
    const fate = fateOf(error, {
      attempt: ended.attempt,
      attempts: job.opts.attempts ?? 1,
      postponed: Math.max(0, job.attemptsStarted - job.attemptsMade - 1),
      postponeAtMost: this.#postponeAtMost(job.name),
    });
    if (fate.kind === 'retry') throw error;
    if (fate.kind === 'postpone') return this.#comeBack(job, token, fate.until.getTime());
    try {
      await this.#options.onGaveUp(ended, fate.reason);
    } catch (unrecorded) {
      this.#options.onError(new Error(`Job "${job.name}" failed and its failure could not be recorded; it comes back.`, { cause: unrecorded }));
      return this.#comeBack(job, token, Date.now() + UNRECORDED_COMES_BACK_MS);
    }
    this.#reported.add(job);
    throw Object.assign(new UnrecoverableError(fate.reason.message), { cause: fate.reason });
  }

  async #comeBack(job: Job<JobData, void>, token: string | undefined, time: number): Promise<never> {
    await job.moveToDelayed(time, token);
    throw new DelayedError();
  }

  #postponeAtMost(name: string): number {
    return this.#registry.jobs.find((job) => job.name === name)?.postponeAtMost ?? 50;
  }

  /** A job whose workers were killed too often is failed by the queue itself and never reaches a processor. */
  #onFailedOutside(job: Job<JobData, void> | undefined, error: Error): void {
    if (!job || !(error instanceof UnrecoverableError) || this.#reported.has(job)) return;
    const report = this.#options
      .onGaveUp({ id: job.id ?? '', name: job.name, payload: job.data, attempt: job.attemptsMade }, error)
      .catch((unrecorded: unknown) => this.#options.onError(new Error(`The failure of job "${job.name}" could not be recorded.`, { cause: unrecorded })))
      .finally(() => this.#reporting.delete(report));
    this.#reporting.add(report);
  }
}
