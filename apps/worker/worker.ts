import type { QueueSettings } from '#libs/platform/settings/settings';
import { JobQueue } from '#libs/platform/queue/job-queue';
import { JobWorkers } from '#libs/platform/queue/job-workers';
import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import { chaseStudy } from '#libs/steps/chase/chase-study';
import { copyConsents } from '#libs/steps/consent/copy-consents';
import { wakeOrder } from '#libs/steps/chase/wake-order';
import { jobs } from '#libs/steps/jobs';
import { sendMessage } from '#libs/steps/messages/send-message';
import { recordProblem } from '#libs/steps/problem';
import { finishDocument } from '#libs/steps/report/finish-document';
import { sweep } from '#libs/steps/sweep';
import type { WorkerDeps } from '#libs/steps/worker-deps';
import { Relay } from './relay.js';
import { schedules } from './schedules.js';

export interface WorkerOptions {
  deps: WorkerDeps;
  queue: QueueSettings & { namespace?: string };
  /** The worker's own login, which hears what the outbox says. */
  databaseUrl: string;
  onError: (error: Error) => void;
  lockSeconds?: number;
  stalledCheckSeconds?: number;
}

/** An emptied queue has lost its schedules too. */
const SCHEDULE_SECONDS = 30;

export async function startWorker({ deps, queue: settings, databaseUrl, onError, ...locks }: WorkerOptions): Promise<{ queue: JobQueue<(typeof jobs)['jobs']>; close: (limitSeconds: number) => Promise<boolean> }> {
  const connection = openQueueConnection({ ...settings, onError });
  const queue = new JobQueue(jobs, connection, onError);
  await queue.ready();
  const workers = new JobWorkers(jobs, connection, { onGaveUp: (job, error) => recordProblem(deps, job, error), onError, ...locks })
    .handle('send-message', ({ message }) => sendMessage(deps, message))
    .handle('print-document', async ({ document }) => void (await finishDocument(deps, document)))
    .handle('copy-consents', ({ order }) => copyConsents(deps, order))
    .handle('wake-order', ({ order }) => wakeOrder(deps, order))
    .handle('chase-study', ({ order, study }) => chaseStudy(deps, order, study))
    .handle('sweep', async () => void (await sweep(deps)));
  await workers.start();
  const relay = new Relay(deps, queue, databaseUrl, onError);
  await relay.start();
  await queue.schedule(schedules);
  const timer = setInterval(() => void queue.schedule(schedules).catch(onError), SCHEDULE_SECONDS * 1000);
  return {
    queue,
    close: async (limitSeconds) => {
      clearInterval(timer);
      await relay.close();
      const inTime = await workers.close(limitSeconds);
      if (inTime) {
        await queue.close();
        await connection.close();
      }
      return inTime;
    },
  };
}
