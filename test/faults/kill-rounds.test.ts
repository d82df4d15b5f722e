import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

/** The bench itself, shortly: real processes on a PostgreSQL of their own. */
it('two roads on which something is killed, and some people at the desks afterwards: nothing is lost, half-written or sent twice', async () => {
  const folder = await mkdtemp(path.join(tmpdir(), 'rounds-'));
  const figures = path.join(folder, 'figures.json');
  const seed = String(Math.floor(Math.random() * 1e6));
  const bench = spawn(process.execPath, ['scripts/bench-faults.mjs', '--rounds', '2', '--seconds', '20', '--people', '12', '--crowd-seconds', '5', '--seed', seed, '--json', figures], { cwd: root, stdio: ['ignore', 'ignore', 'pipe'] });
  let complaints = `seed ${seed}\n`;
  bench.stderr.on('data', (text: Buffer) => (complaints += text.toString()));
  try {
    const [code] = (await once(bench, 'close')) as [number];
    if (code !== 0) throw new Error(complaints);
    const rows = JSON.parse(await readFile(figures, 'utf8')) as { name: string; value: number }[];
    const value = (name: string) => rows.find((row) => row.name === name)?.value;
    expect({ seed, walked: value('rounds that came to the letter'), rounds: value('rounds walked') }).toEqual({ seed, walked: value('rounds walked'), rounds: expect.any(Number) as unknown });
    expect(value('actions acknowledged')).toBeGreaterThan(20);
    for (const name of ['acknowledged facts lost', 'half-written steps', 'files or papers missing', 'mails lost unnoticed', 'mails sent twice', 'mails not known or refused that their order does not show', 'of them refused or broken otherwise']) expect([seed, name, value(name)]).toEqual([seed, name, 0]);
    process.stderr.write(`seed ${seed}\n`);
  } finally {
    bench.kill();
    await rm(folder, { recursive: true, force: true });
  }
}, 240_000);
