import { createPostgresBackend, createRedisBackend, withBackend, type JobProgress, type Processor } from 'bullmq';
import { Redis } from 'ioredis';
import pg from 'pg';
import type { QueueSettings } from '../settings/settings.js';
import { QUEUES, type QueueName } from './job-definition.js';
import { QueueClient } from './queue-client.js';

export type JobData = Record<string, string | number | undefined>;
export type BullProcessor = Processor<JobData, void, string, JobProgress>;

const PREFIX = 'cotyla';
/** After the database could not be reached. */
const AGAIN_MS = 1000;
const postgres = withBackend(createPostgresBackend);
const redis = withBackend(createRedisBackend);

const openPostgresQueue = (name: string, connection: pg.Pool) => new postgres.Queue<JobData, void>(name, { connection });
const openRedisQueue = (name: string, connection: Redis) => new redis.Queue<JobData, void>(name, { connection, prefix: PREFIX });
const openPostgresWorker = (name: string, run: BullProcessor, options: WorkerLimits & { connection: pg.Pool }) =>
  new postgres.Worker<JobData, void>(name, run, { autorun: false, runRetryDelay: AGAIN_MS, ...options });
const openRedisWorker = (name: string, run: BullProcessor, options: WorkerLimits & { connection: Redis }) =>
  new redis.Worker<JobData, void>(name, run, { autorun: false, prefix: PREFIX, ...options });

export type BullQueue = ReturnType<typeof openPostgresQueue | typeof openRedisQueue>;
export type BullWorker = ReturnType<typeof openPostgresWorker | typeof openRedisWorker>;

export interface WorkerLimits {
  concurrency: number;
  lockDuration: number;
  stalledInterval: number;
  maxStalledCount: number;
}

export interface QueueConnection {
  openQueue(name: QueueName): BullQueue;
  openWorker(name: QueueName, run: BullProcessor, limits: WorkerLimits): BullWorker;
  close(): Promise<void>;
}

export interface QueueConnectionOptions extends QueueSettings {
  /** Keeps several installations or tests on one server apart. */
  namespace?: string;
  /** PostgreSQL connections of this process; each worker holds one for as long as it runs. */
  maxConnections?: number;
  onError: (error: Error) => void;
}

export function openQueueConnection(options: QueueConnectionOptions): QueueConnection {
  return options.backend === 'postgres' ? onPostgres(options) : onRedis(options);
}

const fullName = (options: QueueConnectionOptions, name: QueueName) => `${options.namespace ?? 'cotyla'}-${name}`;

function onPostgres(options: QueueConnectionOptions): QueueConnection {
  const pool = new pg.Pool({
    connectionString: options.url,
    options: '-c search_path=bullmq',
    max: options.maxConnections ?? QUEUES.length + 7,
    keepAlive: true,
    Client: QueueClient,
  });
  pool.on('error', options.onError);
  // Each queue and each of its workers listens too; there are a handful, and not more with time.
  pool.setMaxListeners(50);
  return {
    openQueue: (name) => openPostgresQueue(fullName(options, name), pool),
    openWorker: (name, run, limits) => openPostgresWorker(fullName(options, name), run, { connection: pool, ...limits }),
    close: () => pool.end(),
  };
}

function onRedis(options: QueueConnectionOptions): QueueConnection {
  // adding a job must fail at once when Redis is away (the outbox keeps it), a worker must wait
  const adding = new Redis(options.url, { maxRetriesPerRequest: 1, connectionName: 'cotyla-add', lazyConnect: true });
  const working = new Redis(options.url, { maxRetriesPerRequest: null, connectionName: 'cotyla-work', lazyConnect: true });
  for (const client of [adding, working]) client.on('error', options.onError);
  return {
    openQueue: (name) => openRedisQueue(fullName(options, name), adding),
    openWorker: (name, run, limits) => openRedisWorker(fullName(options, name), run, { connection: working, ...limits }),
    close: async () => {
      for (const client of [adding, working]) {
        if (client.status === 'ready') await client.quit();
        else client.disconnect();
      }
    },
  };
}
