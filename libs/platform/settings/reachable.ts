import { databaseFault } from './reach-database.js';
import { mailFault } from './reach-mail.js';
import { redisFault } from './reach-redis.js';
import { bucketFault } from './reach-bucket.js';
import { SettingsError, type SettingsProblem } from './settings-error.js';
import type { Settings } from './settings.js';

/** Asks everything that the settings name whether it is there; throws SettingsError with a sentence for each that is not. */
export async function checkReachable(settings: Pick<Settings, 'database' | 'queue' | 'files' | 'mail'>): Promise<void> {
  const { database, queue, files, mail } = settings;
  const faults: [variable: string, fault: Promise<string | undefined>][] = [['DATABASE_URL', databaseFault(database.owner)]];
  if (database.app) faults.push(['APP_DATABASE_URL', databaseFault(database.app)]);
  if (database.worker) faults.push(['WORKER_DATABASE_URL', databaseFault(database.worker)]);
  if (queue.backend === 'redis') faults.push(['REDIS_URL', redisFault(queue.url)]);
  if (files.kind === 's3') faults.push(['S3_BUCKET', bucketFault(files)]);
  if (!mail.captured) faults.push(['SMTP_URL', mailFault(mail.url)]);
  const problems: SettingsProblem[] = [];
  for (const [variable, fault] of faults) {
    const sentence = await fault;
    if (sentence) problems.push({ variable, sentence });
  }
  if (problems.length) throw new SettingsError(problems);
}
