import { systemClock } from '#libs/platform/clock/clock';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db, type Tx } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import type { QueueSettings } from '#libs/platform/settings/settings';
import { startWorker } from '#apps/worker/worker';
import { testSecrets } from '#test/support/secrets';

export interface KillableSettings {
  databaseUrl: string;
  queue: QueueSettings & { namespace: string };
  files: string;
  mailUrl: string;
  /** How soon another takes over the jobs of a dead one; short where a test waits for that. */
  lockSeconds?: number;
  /** Where the test's clock stands; without it, the time that it is. */
  now?: string;
  /** Places in our own network that may be called. */
  allow?: string[];
}

/** The worker as it is, in a process of its own that a test may kill; jobs of a dead one are taken over soon. */
/** Says what it does with every practice's rows, so that a test can count how often. */
class TellingDb extends Db {
  override system<T>(reason: string, work: (tx: Tx) => Promise<T>): Promise<T> {
    process.stdout.write(`does ${reason}\n`);
    return super.system(reason, work);
  }
}

const { databaseUrl, queue, files, mailUrl, now, lockSeconds = 2, allow = [] } = JSON.parse(process.argv[2] ?? '') as KillableSettings;
const db = new TellingDb(databaseUrl);
const mailer = new SmtpMailer({ url: mailUrl, from: 'Aldra Basin scheme <server@cotyla.example>' });
await startWorker({
  deps: { db, clock: now ? new TestClock(new Date(now)) : systemClock, files: new DiskFileStore(files), publicUrl: 'https://cotyla.example', mailer, mailDomain: 'cotyla.example', secrets: testSecrets, outgoing: new Outgoing({ outgoing: { allow } }) },
  queue, databaseUrl, onError: (error) => console.error(error), lockSeconds, stalledCheckSeconds: 1, scheduleSeconds: 2,
});
process.stdout.write('ready\n');
