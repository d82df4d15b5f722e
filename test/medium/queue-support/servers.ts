import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
// @ts-expect-error the start scripts are plain JavaScript, run before anything is compiled
import { startPostgres } from '../../../scripts/lib/embedded-postgres.mjs';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import type { QueueSettings } from '#libs/platform/settings/settings';

export type Backend = QueueSettings['backend'];
export interface QueueServer {
  settings: QueueSettings;
  /** Loses every job, as an operator may do at any time. */
  empty(): Promise<void>;
  stop(): Promise<void>;
}

export const redisIsHere = () => spawnSync('redis-server', ['--version']).status === 0;

export function startQueueServer(backend: Backend): Promise<QueueServer> {
  return backend === 'postgres' ? startOnPostgres() : startOnRedis();
}

async function startOnPostgres(): Promise<QueueServer> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-queue-'));
  const cluster = (await startPostgres({ folder, fast: true })) as { url: (database: string) => string; stop: () => Promise<void> };
  const url = cluster.url('postgres');
  await prepareQueue({ ownerUrl: url });
  return {
    settings: { backend: 'postgres', url },
    empty: async () => {
      const client = new pg.Client(url);
      await client.connect();
      const { rows } = await client.query<{ name: string }>(
        `SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'bullmq' AND tablename NOT LIKE '%migration%'`,
      );
      await client.query(`TRUNCATE ${rows.map((row) => `bullmq.${row.name}`).join(', ')} CASCADE`);
      await client.end();
    },
    stop: async () => {
      await cluster.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function startOnRedis(): Promise<QueueServer> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-redis-'));
  const port = await freePort();
  const server = spawn('redis-server', ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder, '--save', '', '--maxmemory-policy', 'noeviction'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise<void>((resolve, reject) => {
    server.stdout.on('data', (line: Buffer) => line.includes('Ready to accept connections') && resolve());
    server.once('exit', (code) => reject(new Error(`redis-server ended with ${code}`)));
  });
  return {
    settings: { backend: 'redis', url: `redis://127.0.0.1:${port}/0` },
    empty: () =>
      new Promise((resolve, reject) => {
        const line = net.connect(port, '127.0.0.1', () => line.write('FLUSHALL\r\n'));
        line.once('error', reject);
        line.once('data', (answer) => (line.end(), answer.toString().startsWith('+OK') ? resolve() : reject(new Error(answer.toString()))));
      }),
    stop: async () => {
      const gone = new Promise((resolve) => server.once('exit', resolve));
      server.kill();
      await gone;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = net.createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as net.AddressInfo;
      server.close(() => resolve(port));
    });
  });
}
