import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import path from 'node:path';
import { NotYetError, PermanentError, RetryableError } from '#libs/platform/queue/job-errors';
import { JobQueue } from '#libs/platform/queue/job-queue';
import { JobWorkers, type EndedJob, type Handler, type JobWorkersOptions } from '#libs/platform/queue/job-workers';
import { openQueueConnection, type QueueConnection } from '#libs/platform/queue/queue-connection';
import { describeWithPeer } from '#test/support/peers';
import { startOnPostgres, startOnRedis, type QueueServer } from './queue-support/servers.js';
import { testRegistry, type testJobs } from './queue-support/test-jobs.js';
import { Happenings } from './queue-support/until.js';

const support = path.join(import.meta.dirname, 'queue-support');

describe('the queue on PostgreSQL', () => behavesAsAQueue(startOnPostgres));
describeWithPeer('redis-server', 'the queue on Redis', (program) => behavesAsAQueue(() => startOnRedis(program)));

function behavesAsAQueue(startServer: () => Promise<QueueServer>): void {
  let server: QueueServer;
  let namespace: string;
  let closing: (() => Promise<unknown>)[];
  let errors: Error[];

  beforeAll(async () => {
    server = await startServer();
  });
  afterAll(() => server.stop());

  beforeEach(() => {
    namespace = `t${randomUUID().slice(0, 8)}`;
    closing = [];
    errors = [];
  });
  afterEach(async () => {
    for (const close of closing.reverse()) await close();
    expect(errors).toEqual([]);
  });

  function connect(): QueueConnection {
    const connection = openQueueConnection({ ...server.settings, namespace, onError: (error) => errors.push(error) });
    closing.push(() => connection.close());
    return connection;
  }

  function openQueue(): JobQueue<typeof testJobs> {
    const queue = new JobQueue(testRegistry, connect(), (error) => errors.push(error));
    closing.push(() => queue.close());
    return queue;
  }

  interface Handlers {
    letter?: Handler<{ letterId: string }>;
    plan?: Handler<{ planId: string }>;
    due?: Handler<Record<string, never>>;
  }

  async function work(handlers: Handlers, options: Partial<JobWorkersOptions> = {}) {
    const done = new Happenings<EndedJob>();
    const gaveUp = new Happenings<EndedJob & { error: Error }>();
    const workers = new JobWorkers(testRegistry, connect(), {
      onDone: async (job) => done.add(job),
      onGaveUp: async (job, error) => gaveUp.add({ ...job, error }),
      onError: (error) => errors.push(error),
      ...options,
    })
      .handle('send-letter', handlers.letter ?? (async () => {}))
      .handle('draw-plan', handlers.plan ?? (async () => {}))
      .handle('find-due', handlers.due ?? (async () => {}));
    await workers.start();
    closing.push(() => workers.close(10));
    return { done, gaveUp, workers };
  }

  it('hands a job to its handler with the payload it was added with', async () => {
    const queue = openQueue();
    const { done } = await work({});
    await queue.add('send-letter', { letterId: 'l-1' });
    expect(await done.until((all) => all.length > 0)).toMatchObject([{ name: 'send-letter', payload: { letterId: 'l-1' }, attempt: 1 }]);
  });

  it('tries again after an error and tells the handler which attempt it is', async () => {
    const queue = openQueue();
    const attempts: [number, boolean][] = [];
    const { done, gaveUp } = await work({
      letter: async (_, run) => {
        attempts.push([run.attempt, run.lastAttempt]);
        if (run.attempt < 3) throw new RetryableError('the mail server is busy');
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' });
    await done.until((all) => all.length > 0);
    expect(attempts).toEqual([[1, false], [2, false], [3, true]]);
    expect(gaveUp.all).toEqual([]);
  });

  it('reports the last failure once', async () => {
    const queue = openQueue();
    const { gaveUp } = await work({
      letter: async () => {
        throw new Error('still no answer');
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' });
    await gaveUp.until((all) => all.length > 0);
    await queue.add('send-letter', { letterId: 'l-2' });
    const all = await gaveUp.until((reports) => reports.length > 1);
    expect(all.map((report) => [report.payload.letterId, report.attempt, report.error.message])).toEqual([
      ['l-1', 3, 'still no answer'],
      ['l-2', 3, 'still no answer'],
    ]);
  });

  it('gives up at once when trying again cannot help', async () => {
    const queue = openQueue();
    const { gaveUp } = await work({
      letter: async () => {
        throw new PermanentError('no such address');
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' });
    expect(await gaveUp.until((all) => all.length > 0)).toMatchObject([{ attempt: 1, error: new PermanentError('no such address') }]);
  });

  it('brings a job back when its failure could not be recorded', async () => {
    const queue = openQueue();
    const { gaveUp } = await work(
      {
        letter: async () => {
          throw new PermanentError('no such address');
        },
      },
      {
        onGaveUp: async () => {
          throw new Error('the database is away');
        },
        onError: (error) => gaveUpUnrecorded.add(error),
      },
    );
    const delayed = () => queue.counts().then((counts) => counts.send.delayed);
    await queue.add('send-letter', { letterId: 'l-1' });
    await gaveUpUnrecorded.until((all) => all.length > 0);
    while ((await delayed()) === 0) await new Promise(setImmediate);
    expect(gaveUp.all).toEqual([]);
    expect((await queue.counts()).send).toMatchObject({ failed: 0, delayed: 1 });
  });
  const gaveUpUnrecorded = new Happenings<Error>();
  beforeEach(() => gaveUpUnrecorded.all.splice(0));

  it('puts a job off without using up its attempts, but not for ever', async () => {
    const queue = openQueue();
    let runs = 0;
    const { gaveUp } = await work({
      plan: async () => {
        runs += 1;
        throw new NotYetError(new Date(Date.now() + 20), 'the films are not all here');
      },
    });
    await queue.add('draw-plan', { planId: 'p-1' });
    const [report] = await gaveUp.until((all) => all.length > 0);
    expect(report?.error.message).toBe('Put off 3 times, the last time because: the films are not all here');
    expect(runs).toBe(4);
  });

  it('checks the payload again in the worker', async () => {
    const queue = openQueue();
    const { gaveUp } = await work({});
    const raw = connect().openQueue('send');
    closing.push(() => raw.close());
    await raw.add('send-letter', { letterId: 7 }, { jobId: 'stray' });
    const [report] = await gaveUp.until((all) => all.length > 0);
    expect(report?.error.message).toMatch(/payload of job "send-letter" is wrong: letterId/);
    await expect(queue.relay('send-letter', { letter: 'l-1' })).rejects.toThrow(/payload of job "send-letter" is wrong/);
  });

  it('adds a waiting job only once for the same key', async () => {
    const queue = openQueue();
    for (let i = 0; i < 3; i++) await queue.add('send-letter', { letterId: 'l-1' }, { key: 'l-1' });
    await queue.add('send-letter', { letterId: 'l-2' }, { key: 'l-2' });
    expect((await queue.counts()).send.waiting).toBe(2);
  });

  it('runs a key again after its job has ended, although ended jobs are retained', async () => {
    const queue = openQueue();
    const { done, gaveUp } = await work({
      letter: async ({ letterId }) => {
        if (letterId === 'bad') throw new PermanentError('no such address');
      },
    });
    // an ended job is counted only after its handler's hook, so wait for the queue to have let go of it
    const idle = async () => {
      while ((await queue.counts()).send.active > 0) await new Promise(setImmediate);
    };
    for (let times = 1; times <= 2; times++) {
      await queue.add('send-letter', { letterId: 'good' }, { key: 'good' });
      await queue.add('send-letter', { letterId: 'bad' }, { key: 'bad' });
      await done.until((all) => all.length === times);
      await gaveUp.until((all) => all.length === times);
      await idle();
    }
    expect(done.all).toHaveLength(2);
    expect(gaveUp.all).toHaveLength(2);
  });

  it('keeps one more run for afterwards when a key is added while its job runs', async () => {
    const queue = openQueue();
    const began = new Happenings<string>();
    let release = () => {};
    const gate = new Promise<void>((resolve) => (release = resolve));
    const { done } = await work({
      letter: async ({ letterId }) => {
        began.add(letterId);
        await gate;
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' }, { key: 'l-1' });
    await began.until((all) => all.length === 1);
    for (let i = 0; i < 3; i++) await queue.add('send-letter', { letterId: 'l-1' }, { key: 'l-1' });
    release();
    await done.until((all) => all.length === 2);
    while ((await queue.counts()).send.active > 0) await new Promise(setImmediate);
    expect((await queue.counts()).send.waiting).toBe(0);
    expect(began.all).toHaveLength(2);
  });

  it('keeps the list of schedules, also when set again and after the queue was emptied', async () => {
    const queue = openQueue();
    const list = [{ id: 'due', job: 'find-due', payload: {}, everySeconds: 1 }] as const;
    const { done } = await work({});
    await queue.schedule([...list, { id: 'nightly', job: 'find-due', payload: {}, cron: '0 3 * * *', timeZone: 'Europe/Lisbon' }]);
    await done.until((all) => all.length >= 1);
    await queue.schedule(list);
    await server.empty();
    const before = done.all.length;
    await queue.schedule(list);
    await done.until((all) => all.length > before);
    await queue.schedule([]);
    expect(done.all.every((job) => job.name === 'find-due')).toBe(true);
  });

  it('loses nothing that a sweep finds again when the queue is emptied', async () => {
    const queue = openQueue();
    const stored = ['l-1', 'l-2', 'l-3'];
    const sent = new Set<string>();
    const sweep = async () => {
      for (const letterId of stored) if (!sent.has(letterId)) await queue.add('send-letter', { letterId }, { key: letterId });
    };
    await sweep();
    await server.empty();
    expect((await queue.counts()).send.waiting).toBe(0);
    await sweep();
    const { done } = await work({ letter: async ({ letterId }) => void sent.add(letterId) });
    await done.until((all) => all.length === stored.length);
    expect([...sent].sort()).toEqual(stored);
  });

  it('lets the running job end before it closes', async () => {
    const queue = openQueue();
    const began = new Happenings<string>();
    let release = () => {};
    const gate = new Promise<void>((resolve) => (release = resolve));
    const { done, workers } = await work({
      letter: async ({ letterId }) => {
        began.add(letterId);
        await gate;
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' });
    await began.until((all) => all.length === 1);
    const closed = workers.close(10);
    release();
    expect(await closed).toBe(true);
    expect(done.all).toHaveLength(1);
  });

  it('stops waiting for a job that does not end, and tells it', async () => {
    const queue = openQueue();
    const began = new Happenings<AbortSignal>();
    let release = () => {};
    const gate = new Promise<void>((resolve) => (release = resolve));
    const { workers } = await work({
      letter: async (_, run) => {
        began.add(run.signal);
        await gate;
      },
    });
    await queue.add('send-letter', { letterId: 'l-1' });
    const [signal] = await began.until((all) => all.length === 1);
    expect(await workers.close(0.05)).toBe(false);
    expect(signal?.aborted).toBe(true);
    release();
  });

  it.each([
    ['does it in another worker', 3],
    ['gives it up when it may not be tried again, and says so', 0],
  ])('when a worker is killed in the middle of a job, %s', async (_, killedAtMost) => {
    const queue = openQueue();
    await queue.add('send-letter', { letterId: 'l-1' }, { key: 'l-1' });
    await killWhenItHasBegun();
    const { done, gaveUp } = await work({}, { lockSeconds: 2, stalledCheckSeconds: 1, killedAtMost });
    if (killedAtMost) expect(await done.until((all) => all.length > 0)).toMatchObject([{ payload: { letterId: 'l-1' } }]);
    else expect(await gaveUp.until((all) => all.length > 0)).toMatchObject([{ payload: { letterId: 'l-1' } }]);
    expect(done.all.length + gaveUp.all.length).toBe(1);
  });

  async function killWhenItHasBegun(): Promise<void> {
    const settings = JSON.stringify({ ...server.settings, namespace });
    const child = spawn(process.execPath, ['-C', 'development', '--import', path.join(support, 'run-typescript.mjs'), path.join(support, 'doomed-worker.ts'), settings], {
      env: { PATH: process.env.PATH },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const gone = new Promise((resolve) => child.once('exit', resolve));
    await new Promise<void>((resolve, reject) => {
      child.stdout.on('data', (line: Buffer) => line.includes('began l-1') && resolve());
      child.once('exit', (code) => reject(new Error(`the worker ended by itself with ${code}`)));
    });
    child.kill('SIGKILL');
    await gone;
  }
}
