import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { TestDatabase } from '../../support/database.js';
import { freePort } from '../../medium/queue-support/free-port.js';

// From dist/test/bench/support.
const root = path.resolve(import.meta.dirname, '../../../..');

export interface Listening { port: number; pid: number; stop(): Promise<void> }

export const environment = (database: TestDatabase, folder: string): NodeJS.ProcessEnv => ({
  ...process.env, NODE_ENV: 'production', DATABASE_URL: database.ownerUrl, APP_DATABASE_URL: database.apiUrl, WORKER_DATABASE_URL: database.workerUrl, DATA_FOLDER: folder, DEMO: '0', HOST: '127.0.0.1', PUBLIC_URL: 'http://127.0.0.1',
});

/** A process of the program as it runs in production. */
export const startApp = (name: 'gateway' | 'worker', env: NodeJS.ProcessEnv): ChildProcess =>
  spawn(process.execPath, [path.join(root, `dist/apps/${name}/main.js`)], { cwd: root, env, stdio: ['ignore', 'pipe', 'ignore'] });

export async function startGatewayProcess(database: TestDatabase, folder: string): Promise<Listening> {
  const port = await freePort();
  const child = startApp('gateway', { ...environment(database, folder), GATEWAY_PORT: String(port) });
  await once(child.stdout!, 'data');
  return listening(child, port);
}

/** dcmtk's receiver, which writes what comes into a folder. */
export async function startStorescp(folder: string): Promise<Listening> {
  const port = await freePort();
  const child = spawn('storescp', ['-v', '--fork', '-pdu', '131072', '-od', folder, String(port)], { stdio: ['ignore', 'ignore', 'ignore'] });
  await once(child, 'spawn');
  return listening(child, port);
}

function listening(child: ChildProcess, port: number): Listening {
  const gone = once(child, 'exit');
  return { port, pid: child.pid!, stop: async () => { child.kill(); await gone; } };
}

/** The most memory that a process ever had. */
export async function peakMegabytes(pid: number): Promise<number> {
  return Number(/VmHWM:\s+(\d+)/.exec(await readFile(`/proc/${pid}/status`, 'utf8'))![1]) / 1024;
}
