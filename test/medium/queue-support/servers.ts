import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
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
    empty: async () => {
      const client = new pg.Client(database.ownerUrl);
      await client.connect();
      const { rows } = await client.query<{ name: string }>(
        `SELECT quote_ident(tablename) AS name FROM pg_tables WHERE schemaname = 'bullmq' AND tablename NOT LIKE '%migration%'`,
      );
      await client.query(`TRUNCATE ${rows.map((row) => `bullmq.${row.name}`).join(', ')} CASCADE`);
      await client.end();
    },
    stop: () => database.drop(),
  };
}

export async function startOnRedis(program: string, options: string[] = []): Promise<QueueServer> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'cotyla-redis-'));
  const port = await freePort();
  const server = spawn(program, ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder, '--save', '', '--maxmemory-policy', 'noeviction', ...options], {
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
