import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { openFileStore } from '#libs/platform/files/open-file-store';
import { tombstoneFile } from '#libs/platform/backup/tombstones';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import { openSecretBox } from '#libs/platform/secrets/open-secret-box';
import { installOwnStudies } from '#libs/platform/settings/own-studies';
import { readSettings } from '#libs/platform/settings/settings';
import { startCapture } from './capture.js';
import { startWorker } from './worker.js';

const STOP_SECONDS = 20;

const settings = readSettings();
installOwnStudies(settings.studiesFile);
const onError = (error: Error) => console.error(new Date().toISOString(), 'worker', error);
const databaseUrl = settings.database.worker ?? settings.database.owner;
const db = new Db(databaseUrl);
const capture = settings.mail.captured ? await startCapture(db, onError) : undefined;
const mailer = new SmtpMailer({ url: settings.mail.captured ? capture!.url : settings.mail.url, from: settings.mail.from });
const mailDomain = new URL(settings.publicUrl).hostname;
const worker = await startWorker({ deps: { db, clock: systemClock, files: await openFileStore(settings), publicUrl: settings.publicUrl, mailer, mailDomain, outgoing: new Outgoing(settings), secrets: await openSecretBox(settings), tombstones: tombstoneFile(settings.dataFolder) }, queue: settings.queue, databaseUrl, onError });
console.log('worker ready');

let stopping = false;
for (const signal of ['SIGTERM', 'SIGINT'] as const) {
  process.on(signal, () => {
    if (stopping) return;
    stopping = true;
    worker
      .close(STOP_SECONDS)
      .then(async (inTime) => {
        await capture?.close();
        process.exit(inTime ? 0 : 1);
      })
      .catch((error: Error) => {
        onError(error);
        process.exit(1);
      });
  });
}
