import { createPostgresBackend, withBackend } from 'bullmq';
import pg from 'pg';
import { z } from 'zod';
import { defineJob } from '#libs/platform/queue/job-definition';
import { JobQueue } from '#libs/platform/queue/job-queue';
import { JobRegistry } from '#libs/platform/queue/job-registry';
import { JobWorkers } from '#libs/platform/queue/job-workers';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import type { BenchContext } from '../support/bench.js';
import { cloneDatabase } from '../support/database.js';
import { median } from './support/load.js';

const JOBS = 1_000;
/** As in the worker. */
const AT_ONCE = 4;
const keep = { doneHours: 24, failedDays: 30 };
const registry = new JobRegistry([defineJob({ name: 'nothing', queue: 'work', payload: z.object({ turn: z.number() }), retry: { attempts: 4, backoffSeconds: 5 }, keep })] as const);
const report = (error: Error) => console.error(error);

/** Resolves when so many have been done. */
class Count {
  #left = 0;
  #done: () => void = () => undefined;

  wait(jobs: number): Promise<void> {
    this.#left = jobs;
    return new Promise((resolve) => (this.#done = resolve));
  }

  one(): void {
    if (--this.#left === 0) this.#done();
  }
}

interface Way { add(turn: number): Promise<unknown>; count: Count; close(): Promise<unknown> }

async function through(url: string): Promise<Way> {
  const connection = openQueueConnection({ backend: 'postgres', url, namespace: 'ours', onError: report });
  const queue = new JobQueue(registry, connection, report);
  const count = new Count();
  const workers = new JobWorkers(registry, connection, { onGaveUp: async () => undefined, onError: report }).handle('nothing', async () => count.one());
  await workers.start();
  return { count, add: (turn) => queue.add('nothing', { turn }), close: async () => { await workers.close(10); await queue.close(); await connection.close(); } };
}

async function bare(url: string): Promise<Way> {
  const { Queue, Worker } = withBackend(createPostgresBackend);
  const connection = new pg.Pool({ connectionString: url, options: '-c search_path=bullmq', max: 10 });
  const queue = new Queue('bare', { connection });
  const count = new Count();
  const worker = new Worker('bare', async () => count.one(), { connection, concurrency: AT_ONCE });
  await Promise.all([queue.waitUntilReady(), worker.waitUntilReady()]);
  let id = 0;
  return { count, add: (turn) => queue.add('nothing', { turn }, { jobId: `j${++id}` }), close: async () => { await worker.close(); await queue.close(); await connection.end(); } };
}

async function jobsPerSecond({ add, count }: Way): Promise<number> {
  const done = count.wait(JOBS);
  const start = performance.now();
  for (let i = 0; i < JOBS; i += 50) await Promise.all(Array.from({ length: 50 }, (_, k) => add(i + k)));
  await done;
  return (JOBS * 1000) / (performance.now() - start);
}

export async function run({ row }: BenchContext): Promise<void> {
  const database = await cloneDatabase();
  await prepareQueue({ ownerUrl: database.ownerUrl, logins: ['cotyla_worker'] });
  const [ours, plain] = [await through(database.workerUrl), await bare(database.workerUrl)];
  try {
    const figures: { ours: number; bare: number }[] = [];
    for (let i = 0; i < 3; i++) figures.push({ ours: await jobsPerSecond(ours), bare: await jobsPerSecond(plain) });
    row('1,000 no-op jobs through the registry ÷ bare BullMQ, on PostgreSQL', median(figures.map((f) => f.ours)), 'jobs/s', median(figures.map((f) => f.ours / f.bare)));
  } finally {
    await ours.close();
    await plain.close();
    await database.drop();
  }
}
