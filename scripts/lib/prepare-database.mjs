import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { contentOf, createDatabase, dropDatabase, noteDemo, noteFilling } from './database-content.mjs';
import { deployMigrations } from './deploy-migrations.mjs';
import { keptPasswords, setLogins } from './logins.mjs';
import { root } from './root.mjs';
import { run } from './run.mjs';
import { say } from './say.mjs';

const NAME = 'cotyla';

/** The embedded database, made new when an earlier start was cut short while filling it. */
export async function embeddedDatabase(postgres, folder) {
  const admin = postgres.url('postgres');
  await createDatabase(admin, NAME);
  const url = postgres.url(NAME);
  if ((await contentOf(url)) !== 'half-filled') return url;
  say('The demo was filled in only by half; making it anew.');
  await dropDatabase(admin, NAME);
  for (const left of ['files', 'demo-sign-ins.json']) fs.rmSync(path.join(folder, left), { recursive: true, force: true });
  await createDatabase(admin, NAME);
  return url;
}

/** Whether this database is the demo, or is to become it. */
export async function decideContent({ url, empty }) {
  const content = await contentOf(url);
  if (content === 'half-filled') throw new Error('The database in DATABASE_URL was filled with the demo only by half. Make it anew (DROP DATABASE, CREATE DATABASE) and start again.');
  if (content === 'demo' && empty) throw new Error('This database holds the demo. For a start without it, name an empty database in DATABASE_URL, or none.');
  const fill = content === 'new' && !empty;
  return { demo: content === 'demo' || fill, fill };
}

/** Migrations, the restricted logins unless they are given, and the queue's tables; answers the addresses of the logins. */
export async function prepareDatabase({ url, fill, folder, given }) {
  if (fill) await noteFilling(url);
  const applied = await deployMigrations(url);
  if (applied.length) say(`Applied ${applied.length} migration${applied.length === 1 ? '' : 's'}.`);
  const logins = given ?? (await setLogins(url, keptPasswords(folder)));
  if (!process.env.REDIS_URL) await makeQueueTables(url, logins);
  return logins;
}

/** Without Redis the queue lives in this database, in tables that only the owner may make. */
async function makeQueueTables(ownerUrl, logins) {
  const { prepareQueue } = await import(pathToFileURL(path.join(root, 'dist/libs/platform/queue/prepare-queue.js')));
  await prepareQueue({ ownerUrl, logins: [decodeURIComponent(new URL(logins.worker).username)] });
}

export async function fillDemo(url, env) {
  say('Filling in the demo …');
  await run(process.execPath, ['--enable-source-maps', path.join(root, 'dist/seed/main.js')], { title: 'Filling in the demo', cwd: root, env });
  await noteDemo(url);
}
