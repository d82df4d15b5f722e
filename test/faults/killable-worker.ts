import { systemClock } from '#libs/platform/clock/clock';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import type { QueueSettings } from '#libs/platform/settings/settings';
import { startWorker } from '#apps/worker/worker';

export interface KillableSettings {
  databaseUrl: string;
  queue: QueueSettings & { namespace: string };
  files: string;
  mailUrl: string;
  /** Where the test's clock stands; without it, the time that it is. */
  now?: string;
}

/** The worker as it is, in a process of its own that a test may kill; jobs of a dead one are taken over soon. */
const { databaseUrl, queue, files, mailUrl, now } = JSON.parse(process.argv[2] ?? '') as KillableSettings;
const db = new Db(databaseUrl);
const mailer = new SmtpMailer({ url: mailUrl, from: 'Aldra Basin scheme <server@cotyla.example>' });
await startWorker({
  deps: { db, clock: now ? new TestClock(new Date(now)) : systemClock, files: new DiskFileStore(files), publicUrl: 'https://cotyla.example', mailer, mailDomain: 'cotyla.example' },
  queue, databaseUrl, onError: (error) => console.error(error), lockSeconds: 2, stalledCheckSeconds: 1,
});
process.stdout.write('ready\n');
