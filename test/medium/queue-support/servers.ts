import { spawn, type ChildProcess } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import type { QueueSettings } from '#libs/platform/settings/settings';
import { cloneDatabase } from '#test/support/database';
import { freePort } from './free-port.js';

export interface QueueServer {
  settings: QueueSettings;
  /** Loses every job, as an operator may do at any time. */
  empty(): Promise<void>;
  stop(): Promise<void>;
}

export async function startOnPostgres(): Promise<QueueServer> {
  const database = await cloneDatabase();
  await prepareQueue({ ownerUrl: database.ownerUrl, logins: ['cotyla_worker'] });
  return {
    settings: { backend: 'postgres', url: database.workerUrl },
    empty: () => emptyPostgres(database.ownerUrl),
    stop: () => database.drop(),
  };
}

async function emptyPostgres(url: string): Promise<void> {
  const client = new pg.Client(url);
  await client.connect();
  const { rows } = await client.query<{ name: string }>("SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'bullmq' AND tablename NOT LIKE '%migration%'");
  await client.query(`TRUNCATE ${rows.map((row) => `bullmq.${row.name}`).join(', ')} CASCADE`);
  await client.end();
}

export interface RestartableServer extends QueueServer {
  /** Killed with SIGKILL, as a failing machine does it, and gone until it is started again at its old address. */
  kill(): Promise<void>;
  start(): Promise<void>;
}

export async function startOnRedis(program: string, options: string[] = []): Promise<RestartableServer> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-redis-'));
  const port = await freePort();
  let server: ChildProcess;
  const start = async () => {
    server = spawn(program, ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder, '--save', '', '--maxmemory-policy', 'noeviction', ...options], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await new Promise<void>((resolve, reject) => {
      server.stdout!.on('data', (line: Buffer) => line.includes('Ready to accept connections') && resolve());
      server.once('exit', (code) => reject(new Error(`redis-server ended with ${code}`)));
    });
  };
  const end = async (signal: 'SIGTERM' | 'SIGKILL') => {
    if (server.exitCode !== null || server.signalCode !== null) return;
    const gone = new Promise((resolve) => server.once('exit', resolve));
    server.kill(signal);
    await gone;
  };
  await start();
  return {
    settings: { backend: 'redis', url: `redis://127.0.0.1:${port}/0` },
    start,
    kill: () => end('SIGKILL'),
    empty: () =>
      new Promise((resolve, reject) => {
        const line = net.connect(port, '127.0.0.1', () => line.write('FLUSHALL\r\n'));
        line.once('error', reject);
        line.once('data', (answer) => (line.end(), answer.toString().startsWith('+OK') ? resolve() : reject(new Error(answer.toString()))));
      }),
    stop: async () => {
      await end('SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

interface Cluster { url: (database: string) => string; stop: () => Promise<void>; found: boolean }

/** A PostgreSQL of its own for the queue alone, so that it can be killed while the other goes on. */
export async function startOnOwnPostgres(): Promise<RestartableServer> {
  const { startPostgres } = (await import('../../../scripts/lib/embedded-postgres.mjs' as string)) as { startPostgres: (o: { folder: string }) => Promise<Cluster> };
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-queue-'));
  chmodSync(folder, 0o711);
  let cluster = await startPostgres({ folder });
  const url = cluster.url('postgres');
  await prepareQueue({ ownerUrl: url });
  const data = await dataFolderOf(url);
  return {
    settings: { backend: 'postgres', url },
    kill: async () => {
      process.kill(Number(readFileSync(path.join(data, 'postmaster.pid'), 'utf8').split('\n')[0]), 'SIGKILL');
    },
    start: async () => {
      cluster = await startPostgres({ folder });
      if (cluster.url('postgres') !== url) throw new Error('The database came up at another port.');
    },
    empty: () => emptyPostgres(url),
    stop: async () => {
      await cluster.stop();
      for (const left of [path.dirname(data), folder]) rmSync(left, { recursive: true, force: true });
    },
  };
}

async function dataFolderOf(url: string): Promise<string> {
  const client = new pg.Client(url);
  await client.connect();
  const { rows } = await client.query<{ data_directory: string }>('SHOW data_directory');
  await client.end();
  return rows[0]!.data_directory;
}
