import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { BenchContext } from '../support/bench.js';
import { freePort } from '../medium/queue-support/free-port.js';

// From dist/test/bench.
const root = path.resolve(import.meta.dirname, '../../..');

/** Seconds from the command to a page that the browser could show; the program is then stopped as with Ctrl-C. */
async function secondsToFirstPage(begin: () => void, folder: string, cache: string): Promise<number> {
  const start = performance.now();
  begin();
  const port = String(await freePort());
  const child = spawn('npm', ['start', '--', '--port', port], { cwd: folder, env: { ...process.env, npm_config_cache: cache }, stdio: ['ignore', 'ignore', 'inherit'], detached: true });
  const gone = once(child, 'exit');
  const ended = gone.then(() => { throw new Error('The program ended before its first page.'); });
  await Promise.race([firstPage(`http://127.0.0.1:${port}`), ended]);
  const seconds = (performance.now() - start) / 1000;
  process.kill(-child.pid!, 'SIGINT');
  await gone;
  ended.catch(() => undefined);
  return seconds;
}

async function firstPage(url: string): Promise<void> {
  for (;;) {
    const there = await Promise.all(['/', '/api/demo-sign-ins'].map((address) => fetch(url + address).then((sent) => sent.ok, () => false)));
    if (there.every(Boolean)) return;
    await pause(100);
  }
}

export async function run({ row, clone }: BenchContext): Promise<void> {
  if (!clone) return;
  const folder = await mkdtemp(path.join(tmpdir(), 'clone-'));
  const cache = path.join(folder, 'npm-cache');
  const into = (name: string) => () => { execFileSync('git', ['clone', '--quiet', root, path.join(folder, name)]); };
  try {
    row('clone to first page, nothing downloaded before', await secondsToFirstPage(into('cold'), path.join(folder, 'cold'), cache), 's');
    row('clone to first page, packages downloaded before', await secondsToFirstPage(into('warm'), path.join(folder, 'warm'), cache), 's');
    row('second start to first page', await secondsToFirstPage(() => undefined, path.join(folder, 'warm'), cache), 's');
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
