import type { QueueSettings } from '#libs/platform/settings/settings';
import { JobQueue } from '#libs/platform/queue/job-queue';
import { JobWorkers } from '#libs/platform/queue/job-workers';
import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import { sealStored } from '#libs/platform/secrets/seal-stored';
import { chaseStudy } from '#libs/steps/chase/chase-study';
import { copyConsents } from '#libs/steps/consent/copy-consents';
import { wakeOrder } from '#libs/steps/chase/wake-order';
import { answerCommitment } from '#libs/steps/gateway/answer-commitment';
import { drawPreview } from '#libs/steps/imaging/draw-preview';
import { deliverPackage } from '#libs/steps/dispatch/deliver';
import { tryChannel } from '#libs/steps/dispatch/try-channel';
import { jobs } from '#libs/steps/jobs';
import { checkAhead } from '#libs/steps/look-ahead/check-ahead';
import { lookAhead } from '#libs/steps/look-ahead/look-ahead';
import { sendMessage } from '#libs/steps/messages/send-message';
import { recordProblem, settleProblem } from '#libs/steps/problem';
import { endSharing } from '#libs/steps/referral/end-sharing';
import { finishDocument } from '#libs/steps/report/finish-document';
import { noteErased } from '#libs/steps/requests/note-erased';
import { writeTombstones } from '#libs/steps/requests/write-tombstones';
import { freezeJob } from '#libs/steps/statistics/freeze-job';
import { sweep } from '#libs/steps/sweep';
import { offerSlots } from '#libs/steps/waiting/offer-slots';
import { sendWebhook } from '#libs/steps/webhooks/send-webhook';
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
  /** How soon a queue that was emptied, or whose clock was put back, has its schedules again. */
  scheduleSeconds?: number;
}

const SCHEDULE_SECONDS = 30;

export async function startWorker({ deps, queue: settings, databaseUrl, onError, scheduleSeconds = SCHEDULE_SECONDS, ...locks }: WorkerOptions): Promise<{ queue: JobQueue<(typeof jobs)['jobs']>; close: (limitSeconds: number) => Promise<boolean> }> {
  const connection = openQueueConnection({ ...settings, onError });
  const queue = new JobQueue(jobs, connection, onError);
  await queue.ready();
  const workers = new JobWorkers(jobs, connection, { onGaveUp: (job, error) => recordProblem(deps, job, error), onDone: (job) => settleProblem(deps, job), onError, ...locks })
    .handle('send-message', ({ message }) => sendMessage(deps, message))
    .handle('deliver-package', ({ send }, run) => deliverPackage(deps, send, run))
    .handle('print-document', async ({ document }) => void (await finishDocument(deps, document)))
    .handle('copy-consents', ({ order }) => copyConsents(deps, order))
    .handle('wake-order', ({ order }) => wakeOrder(deps, order))
    .handle('chase-study', ({ order, study }) => chaseStudy(deps, order, study))
    .handle('note-erased', ({ person }) => noteErased(deps, person))
    .handle('write-tombstones', () => writeTombstones(deps))
    .handle('end-sharing', ({ order, practice }) => endSharing(deps, order, practice))
    .handle('draw-preview', ({ image }) => drawPreview(deps, image))
    .handle('answer-commitment', (asked) => answerCommitment(deps, asked))
    .handle('try-channel', ({ trial }, run) => tryChannel(deps, trial, run))
    .handle('send-webhook', ({ delivery }) => sendWebhook(deps, delivery))
    .handle('look-ahead', async () => void (await lookAhead(deps)))
    .handle('check-ahead', ({ order }) => checkAhead(deps, order))
    .handle('offer-slots', ({ practice }) => offerSlots(deps, practice))
    .handle('freeze-sets', (asked) => freezeJob(deps, asked))
    .handle('sweep', async () => void (await sweep(deps)));
  await sealStored(deps.db, deps.secrets);
  await workers.start();
  const relay = new Relay(deps, queue, databaseUrl, onError);
  await relay.start();
  await queue.schedule(schedules);
  // A job that was lost with its queue is made good at the next start.
  await writeTombstones(deps);
  const timer = setInterval(() => void queue.schedule(schedules).catch(onError), scheduleSeconds * 1000);
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
