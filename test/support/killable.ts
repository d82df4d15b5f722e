import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import type { KillableSettings } from '#test/faults/killable-worker';

const TESTS = path.resolve(import.meta.dirname, '..');

/** A worker process that is ready for jobs. */
export async function startKillable(settings: KillableSettings): Promise<ChildProcess> {
  const child = spawn(process.execPath, ['-C', 'development', '--import', path.join(TESTS, 'medium/queue-support/run-typescript.mjs'), path.join(TESTS, 'faults/killable-worker.ts'), JSON.stringify(settings)], { stdio: ['ignore', 'pipe', 'inherit'] });
  await new Promise<void>((resolve, reject) => {
    child.stdout!.on('data', (line: Buffer) => line.includes('ready') && resolve());
    child.once('exit', (code, signal) => reject(new Error(`The worker ended before it was ready: ${code ?? signal}`)));
  });
  return child;
}

export async function kill(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill('SIGKILL');
  await gone;
}
