import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import pg from 'pg';
import { buildServer, compile } from './build-server.mjs';
import { buildWeb } from './build-web.mjs';
import { startChild } from './children.mjs';
import { createDatabase } from './database-content.mjs';
import { startPostgres } from './embedded-postgres.mjs';
import { generateClient } from './generate-client.mjs';
import { waitForHealth } from './health.mjs';
import { freePort } from './ports.mjs';
import { prepareDatabase } from './prepare-database.mjs';
import { root } from './root.mjs';
import { say } from './say.mjs';
import { childEnvironment } from './start-environment.mjs';
import { filesBelow } from './stamps.mjs';

const PARTS = ['test/faults', 'test/support', 'test/medium/queue-support', 'test/medium/access-support'];

/** Node collects lazily where memory is plenty: under this limit a process that holds on to more and more ends, and one that only waits to tidy up does not grow. */
const HEAP_MIB = 256;

/** Kills the real processes, on a PostgreSQL and in a folder of their own, while dogs walk the straight road; then lets many people at the two apis. */
export async function benchFaults(asked) {
  const { rounds, seed } = asked;
  await generateClient();
  await Promise.all([buildServer(), buildWeb()]);
  await compile(PARTS.flatMap(filesBelow).filter((file) => /\.ts$/.test(file) && !/\.test\.ts$|\.d\.ts$/.test(file)));
  say(`Seed ${seed}, ${rounds} rounds, ${asked.crowd.people} people for ${asked.crowd.seconds} s`);

  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'cotyla-faults-'));
  fs.chmodSync(folder, 0o711);
  const database = await killableDatabase(path.join(folder, 'pg'));
  try {
    return await killing({ ...asked, folder, database });
  } finally {
    await database.stop();
    for (const left of [database.home, folder]) fs.rmSync(left, { recursive: true, force: true });
  }
}

async function killing({ folder, database, ...asked }) {
  await createDatabase(database.url('postgres'), 'cotyla');
  const url = database.url('cotyla');
  const logins = await prepareDatabase({ url, fill: false, folder });
  const output = fs.openSync(path.join(folder, 'processes.log'), 'a');
  const env = (port, mailUrl) => ({ ...childEnvironment({ url, logins, demo: false, folder, port }), PUBLIC_URL: 'https://cotyla.example', NODE_OPTIONS: `--max-old-space-size=${HEAP_MIB}`, SMTP_URL: mailUrl, MAIL_FROM: 'Aldra Basin scheme <server@cotyla.example>' });
  const start = (name, script, environment) => startChild(name, script, environment, { stdio: ['ignore', output, output] });
  const apiPorts = [await freePort(), await freePort()];
  const rows = [];
  const { runKillRounds } = await import(pathToFileURL(path.join(root, 'dist/test/faults/kills/kill-rounds.js')));
  const wrong = await runKillRounds({
    ...asked, folder, apiPorts, workerUrl: logins.worker, say,
    startApi: (port, mailUrl) => start('api', 'dist/apps/api/main.js', env(port, mailUrl)),
    startWorker: (mailUrl) => start('worker', 'dist/apps/worker/main.js', env(apiPorts[0], mailUrl)),
    killDatabase: database.killAndStart,
    emptyQueue: () => emptyQueue(url),
    untilHealthy: (port) => untilHealthy(`http://127.0.0.1:${port}`),
    row: (name, value, unit) => {
      rows.push({ name, value, unit });
      console.log(JSON.stringify({ name, value, unit }));
    },
  });
  if (process.env.KEEP_LOG) fs.copyFileSync(path.join(folder, 'processes.log'), process.env.KEEP_LOG);
  return { rows, wrong };
}

async function untilHealthy(url) {
  const patience = AbortSignal.timeout(30_000);
  await waitForHealth(url, patience);
  if (patience.aborted) throw new Error('The api did not start.');
}

async function killableDatabase(folder) {
  let postgres = await startPostgres({ folder });
  const [home, data] = await answered(postgres.url('postgres'), 'SHOW data_directory').then((place) => [path.dirname(place), place]);
  const first = postgres.url('postgres');
  return {
    home, url: postgres.url,
    stop: () => postgres.stop(),
    killAndStart: async () => {
      process.kill(Number(fs.readFileSync(path.join(data, 'postmaster.pid'), 'utf8').split('\n')[0]), 'SIGKILL');
      postgres = await startPostgres({ folder });
      if (postgres.url('postgres') !== first) throw new Error('The database came up at another port.');
    },
  };
}

async function emptyQueue(url) {
  const tables = await answered(url, "SELECT string_agg('bullmq.' || quote_ident(tablename), ', ') FROM pg_tables WHERE schemaname = 'bullmq' AND tablename NOT LIKE '%migration%'");
  await answered(url, `TRUNCATE ${tables} CASCADE`);
}

async function answered(url, sql) {
  const client = new pg.Client(url);
  await client.connect();
  try {
    const { rows } = await client.query(sql);
    return Object.values(rows[0] ?? {})[0];
  } finally {
    await client.end();
  }
}
