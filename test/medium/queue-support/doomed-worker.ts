import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import { JobWorkers } from '#libs/platform/queue/job-workers';
import type { QueueSettings } from '#libs/platform/settings/settings';
import { testRegistry } from './test-jobs.js';

/** A worker process that begins a job, says so, and never ends it: it waits to be killed. */
const settings = JSON.parse(process.argv[2] ?? '') as QueueSettings & { namespace: string };
const report = (error: Error) => console.error(error);
const connection = openQueueConnection({ ...settings, onError: report });
const workers = new JobWorkers(testRegistry, connection, { onGaveUp: async () => {}, onError: report, lockSeconds: 2, stalledCheckSeconds: 1 })
  .handle('send-letter', async ({ letterId }) => {
    process.stdout.write(`began ${letterId}\n`);
    await new Promise(() => setInterval(() => {}, 1000));
  })
  .handle('draw-plan', async () => {})
  .handle('find-due', async () => {});
await workers.start();
