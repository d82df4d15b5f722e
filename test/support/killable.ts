import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import type { KillableSettings } from '#test/faults/killable-worker';

const TESTS = path.resolve(import.meta.dirname, '..');

/** A worker process that is ready for jobs. */
export async function startKillable(settings: KillableSettings): Promise<ChildProcess> {
  const imports = ['medium/queue-support/run-typescript.mjs', 'faults/shifted-clock.mjs'].flatMap((file) => ['--import', path.join(TESTS, file)]);
  const child = spawn(process.execPath, ['-C', 'development', ...imports, path.join(TESTS, 'faults/killable-worker.ts'), JSON.stringify(settings)], { stdio: ['ignore', 'pipe', 'inherit', 'ipc'] });
  await new Promise<void>((resolve, reject) => {
    child.stdout!.on('data', (line: Buffer) => line.includes('ready') && resolve());
    child.once('exit', (code, signal) => reject(new Error(`The worker ended before it was ready: ${code ?? signal}`)));
  });
  return child;
}

/** From now on the clock of this process goes so many minutes before the true one. */
export function putClock(child: ChildProcess, aheadMinutes: number): Promise<void> {
  return new Promise((resolve, reject) => child.send({ aheadMinutes }, (error) => (error ? reject(error) : resolve())));
}

export async function kill(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill('SIGKILL');
  await gone;
}
