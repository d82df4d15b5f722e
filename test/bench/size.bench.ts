import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import type { BenchContext } from '../support/bench.js';
import { cloneDatabase } from '../support/database.js';
import { freePort } from '../medium/queue-support/free-port.js';

// From dist/test/bench.
const root = path.resolve(import.meta.dirname, '../../..');

/** What the first page asks for before it shows anything. */
async function bundle({ row }: BenchContext): Promise<void> {
  const web = path.join(root, 'dist/web');
  const page = await readFile(path.join(web, 'index.html'), 'utf8');
  const size = async (pattern: RegExp) => {
    const files = await Promise.all([...page.matchAll(pattern)].map((match) => readFile(path.join(web, match[1]!))));
    return files.reduce((sum, file) => sum + gzipSync(file, { level: 9 }).length, 0) / 1000;
  };
  row('web bundle: scripts of the first page, gzip', await size(/(?:src|href)="(\/assets\/[^"]+\.js)"/g), 'kB');
  row('web bundle: styles of the first page, gzip', await size(/href="(\/assets\/[^"]+\.css)"/g), 'kB');
}

/** Resident memory once it stands still after start. */
async function megabytes(child: ChildProcess): Promise<number> {
  await pause(3_000);
  const status = await readFile(`/proc/${child.pid}/status`, 'utf8');
  return Number(/VmRSS:\s+(\d+)/.exec(status)![1]) / 1024;
}

async function memory({ row }: BenchContext): Promise<void> {
  const database = await cloneDatabase();
  await prepareQueue({ ownerUrl: database.ownerUrl, logins: ['cotyla_worker'] });
  const folder = await mkdtemp(path.join(tmpdir(), 'memory-'));
  const port = String(await freePort());
  const env = { ...process.env, NODE_ENV: 'production', DATABASE_URL: database.ownerUrl, APP_DATABASE_URL: database.apiUrl, WORKER_DATABASE_URL: database.workerUrl, DATA_FOLDER: folder, DEMO: '0', HOST: '127.0.0.1', PORT: port, PUBLIC_URL: `http://127.0.0.1:${port}` };
  try {
    for (const name of ['api', 'worker']) {
      const child = spawn(process.execPath, [path.join(root, `dist/apps/${name}/main.js`)], { cwd: root, env, stdio: ['ignore', 'ignore', 'inherit'] });
      const gone = once(child, 'exit');
      row(`memory of the ${name}, idle after start`, await megabytes(child), 'MB');
      if (name === 'api') {
        for (let i = 0; i < 2_000; i += 20) await Promise.all(Array.from({ length: 20 }, async () => (await fetch(`http://127.0.0.1:${port}/api/first-run`)).text()));
        row('memory of the api after 2,000 requests', await megabytes(child), 'MB');
      }
      child.kill();
      await gone;
    }
  } finally {
    await database.drop();
    await rm(folder, { recursive: true, force: true });
  }
}

export async function run(context: BenchContext): Promise<void> {
  await bundle(context);
  await memory(context);
}
