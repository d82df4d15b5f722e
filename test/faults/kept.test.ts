import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { Happenings } from '#test/medium/queue-support/until';

interface Child { name: string; pid: number; ended: Promise<string>; stop: () => Promise<void> }
interface Kept extends Child { trust: () => void }
type Keep = (start: () => Child, options: { say: (line: string) => void; onStart: () => void; pauses?: number[]; settledSeconds?: number }) => Kept;

const { keep } = (await import('../../scripts/lib/kept.mjs' as string)) as { keep: Keep };
const PAUSES = [0.02, 0.04];

/** A process that runs until it is ended. */
function idle(): Child {
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)'], { stdio: 'ignore' });
  const ended = once(child, 'exit').then(([code, signal]: unknown[]) => (signal ? `was ended by ${String(signal)}` : `ended with exit code ${String(code)}`));
  return { name: 'worker', pid: child.pid!, ended, stop: async () => void (child.kill(), await ended) };
}

/** Kept, with what it says and the ids of the processes it started. */
function kept(more: { settledSeconds?: number } = {}) {
  const said: string[] = [];
  const started = new Happenings<number>();
  const one = keep(() => {
    const child = idle();
    started.add(child.pid);
    return child;
  }, { say: (line) => said.push(line), onStart: () => undefined, pauses: PAUSES, ...more });
  const killed = async (n: number) => {
    await started.until((all) => all.length === n);
    process.kill(started.all[n - 1]!, 'SIGKILL');
  };
  return { one, said, started, killed };
}

it('a process that is killed is started again and a sentence says so', async () => {
  const { one, said, started, killed } = kept();
  one.trust();
  await killed(1);
  await started.until((all) => all.length === 2);
  expect(said).toEqual(['The worker was ended by SIGKILL. It is started again in 0.02 s.']);
  await one.stop();
  await one.ended;
  expect(started.all).toHaveLength(2);
});

it('one that ends again and again is given up, with how often', async () => {
  const { one, said, started, killed } = kept();
  one.trust();
  for (const n of [1, 2, 3]) await killed(n);
  expect(await one.ended).toBe('was ended by SIGKILL, for the 3rd time in a row');
  expect(said).toHaveLength(PAUSES.length);
  expect(started.all).toHaveLength(3);
});

it('one that has run for long begins with the shortest pause again', async () => {
  const { one, said, started, killed } = kept({ settledSeconds: 0 });
  one.trust();
  for (const n of [1, 2, 3, 4]) await killed(n);
  await started.until((all) => all.length === 5);
  expect(new Set(said)).toEqual(new Set(['The worker was ended by SIGKILL. It is started again in 0.02 s.']));
  await one.stop();
});

it('one that ends before it was ever up is left, with how it ended', async () => {
  const { one, started, killed } = kept();
  await killed(1);
  expect(await one.ended).toBe('was ended by SIGKILL');
  expect(started.all).toHaveLength(1);
});

it('one that is stopped while it waits to be started again stays away', async () => {
  const { one, said, started, killed } = kept();
  one.trust();
  await killed(1);
  while (said.length === 0) await new Promise(setImmediate);
  await one.stop();
  await one.ended;
  expect(started.all).toHaveLength(1);
});
