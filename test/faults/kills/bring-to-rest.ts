import { setTimeout as pause } from 'node:timers/promises';
import { startWorker } from '#apps/worker/worker';
import { TestClock } from '#libs/platform/clock/test-clock';
import type { Db } from '#libs/platform/database/db';
import type { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import { testSecrets } from '../../support/secrets.js';

const LATER_MS = 10 * 60_000;
const POLL_MS = 50;

interface Ground { db: Db; files: DiskFileStore; mailUrl: string; databaseUrl: string; onError: (error: Error) => void }

/** Ten minutes on, with a worker that nobody kills: what was left lying is found by the sweep and done. Answers that moment. */
export async function bringToRest({ db, files, mailUrl, databaseUrl, onError }: Ground): Promise<Date> {
  const clock = new TestClock(new Date(Date.now() + LATER_MS));
  const mailer = new SmtpMailer({ url: mailUrl, from: 'Aldra Basin scheme <server@cotyla.example>' });
  const worker = await startWorker({
    deps: { db, clock, files, publicUrl: 'https://cotyla.example', mailer, mailDomain: 'cotyla.example', secrets: testSecrets, outgoing: new Outgoing({ outgoing: { allow: [] } }) },
    queue: { backend: 'postgres', url: databaseUrl }, databaseUrl, onError, lockSeconds: 2, stalledCheckSeconds: 1,
  });
  const left = () => db.system('a test looks', async (tx) => (await tx.$queryRaw<{ n: bigint }[]>`
    SELECT (SELECT count(*) FROM outbox WHERE relayed_at IS NULL AND (not_before IS NULL OR not_before <= ${clock.now()}))
      + (SELECT count(*) FROM message WHERE state = 'claimed' OR state = 'waiting' AND COALESCE(not_before, created_at) <= ${clock.now()})
      + (SELECT count(*) FROM document WHERE pdf_sha IS NULL) AS n`)[0]!.n);
  const idle = async () => Object.values(await worker.queue.counts()).every((c) => c.waiting + c.active === 0);
  await worker.queue.add('sweep', {});
  const deadline = Date.now() + 60_000;
  // What is not at rest by then shows in the figures.
  while (Date.now() < deadline && ((await left()) > 0n || !(await idle()))) await pause(POLL_MS);
  await worker.close(10);
  return clock.now();
}
