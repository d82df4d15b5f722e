import type { ChildProcess } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { systemClock } from '#libs/platform/clock/clock';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db, type Tx } from '#libs/platform/database/db';
import { addToOutbox, relayOutbox } from '#libs/platform/database/outbox';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { JobQueue } from '#libs/platform/queue/job-queue';
import { openQueueConnection } from '#libs/platform/queue/queue-connection';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { readOrderScreen } from '#libs/steps/order-screen/read-order-screen';
import type { StepDeps } from '#libs/steps/record/step-deps';
import { jobs } from '#libs/steps/jobs';
import { sweep } from '#libs/steps/sweep';
import { fillDemo } from '#seed/fill-demo';
import type { Road } from '#seed/roads/road';
import { plans } from '#seed/scenario';
import { cloneDatabase } from '#test/support/database';
import { kill, startKillable } from '#test/support/killable';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import type { QueueServer } from '#test/medium/queue-support/servers';
import { Happenings } from '#test/medium/queue-support/until';
import type { KillableSettings } from './killable-worker.js';
import { SlowMailServer } from './slow-mail-server.js';

const POLL_MS = 25;

/** Some orders with work for a worker, a queue, a mail server, and workers that can be killed. */
export class FaultGround {
  readonly #children: ChildProcess[] = [];
  readonly #said = new Map<ChildProcess, Happenings<string>>();
  readonly errors: Error[] = [];

  private constructor(
    readonly roads: Road[],
    readonly deps: StepDeps,
    readonly mail: SlowMailServer,
    readonly server: QueueServer,
    private readonly settings: KillableSettings,
    private readonly db: Db,
    private readonly end: () => Promise<void>,
  ) {}

  static async open(server: QueueServer, dogs: string[], more: Pick<KillableSettings, 'lockSeconds'> = {}): Promise<FaultGround> {
    const database = await cloneDatabase();
    await prepareQueue({ ownerUrl: database.ownerUrl, logins: ['cotyla_worker'] });
    const folder = await mkdtemp(path.join(tmpdir(), 'fault-'));
    const db = new Db(database.workerUrl, { connections: 5 });
    const publicUrl = 'https://cotyla.example';
    const roads = (await fillDemo({ db, files: new DiskFileStore(folder), publicUrl, now: new Date(), chosen: plans.filter((p) => dogs.includes(p.dog)) }))!;
    const mail = new SlowMailServer();
    const settings = { databaseUrl: database.workerUrl, queue: { ...server.settings, namespace: `f${randomUUID().slice(0, 8)}` }, files: folder, mailUrl: await mail.start(), ...more };
    const end = async () => {
      await mail.close();
      await db.close();
      await database.drop();
      await rm(folder, { recursive: true, force: true });
    };
    return new FaultGround(roads, { db, clock: systemClock, publicUrl }, mail, server, settings, db, end);
  }

  get databaseUrl(): string {
    return this.settings.databaseUrl;
  }

  road(dog: string): Road {
    return this.roads.find((r) => r.dog.call === dog)!;
  }

  look<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.db.system('a test looks', work);
  }

  screen(dog: string): Promise<OrderScreen> {
    const { house, order } = this.road(dog);
    return readOrderScreen(this.deps, house.desk, order);
  }

  /** A worker process that is ready for jobs. */
  async startWorker(): Promise<ChildProcess> {
    const child = await startKillable(this.settings);
    this.#children.push(child);
    const said = new Happenings<string>();
    child.stdout!.on('data', (text: Buffer) => text.toString().split('\n').forEach((line) => line.startsWith('does ') && said.add(line.slice(5))));
    this.#said.set(child, said);
    return child;
  }

  /** How often this worker has done so since it was ready. */
  done(child: ChildProcess, what: string): number {
    return this.#said.get(child)!.all.filter((one) => one === what).length;
  }

  async untilDone(child: ChildProcess, what: string, times: number): Promise<void> {
    await this.#said.get(child)!.until((all) => all.filter((one) => one === what).length >= times);
  }

  /** The same messages once more, each a sending of its own. */
  writeAgain(ids: string[]): Promise<string[]> {
    return this.look(async (tx) => {
      const rows = await tx.$queryRaw<{ id: string }[]>`
        INSERT INTO message (order_id, practice_id, once_key, kind, person_id, to_name, to_email, subject, body, documents, subject_id)
        SELECT order_id, practice_id, once_key || ' again', kind, person_id, to_name, to_email, subject, body, documents, subject_id FROM message WHERE id = ANY(${ids}::uuid[]) RETURNING id`;
      for (const { id } of rows) await addToOutbox(tx, 'send-message', { message: id }, { dedupe: id });
      return rows.map(({ id }) => id);
    });
  }

  kill(child: ChildProcess): Promise<void> {
    return kill(child);
  }

  /** The queue, from this process: to put jobs there while no worker runs. */
  async withQueue<T>(work: (queue: JobQueue<(typeof jobs)['jobs']>) => Promise<T>): Promise<T> {
    const connection = openQueueConnection({ ...this.settings.queue, onError: (error) => this.errors.push(error) });
    const queue = new JobQueue(jobs, connection, (error) => this.errors.push(error));
    await queue.ready();
    try {
      return await work(queue);
    } finally {
      await queue.close();
      await connection.close();
    }
  }

  /** Brings the outbox to the queue, as a worker would that is then gone. */
  relay(): Promise<number> {
    return this.withQueue((queue) =>
      this.look((tx) => relayOutbox(tx, async (row) => {
        await queue.relay(row.job, row.payload, row.dedupe ? { key: row.dedupe } : {});
        return 'handed';
      }, new Date())));
  }

  /** What the schedule does, as if so many minutes had gone by. */
  sweepLater(minutes: number): Promise<Record<string, number>> {
    return sweep({ ...this.deps, clock: new TestClock(new Date(Date.now() + minutes * 60_000)) });
  }

  /** Until the tables say so: other processes write them, so they are looked at again and again. */
  async until(condition: (tx: Tx) => Promise<boolean>): Promise<void> {
    while (!(await this.look(condition))) await pause(POLL_MS);
  }

  /** Until every job has been done and nothing more comes of it. */
  async untilIdle(): Promise<void> {
    await this.withQueue(async (queue) => {
      for (;;) {
        const due = await this.look(async (tx) => (await tx.$queryRaw<{ n: bigint }[]>`SELECT count(*) AS n FROM outbox WHERE relayed_at IS NULL AND (not_before IS NULL OR not_before <= now())`)[0]!.n);
        const counts = await queue.counts();
        if (due === 0n && Object.values(counts).every((c) => c.waiting + c.active === 0)) return;
        await pause(POLL_MS);
      }
    });
  }

  async close(): Promise<void> {
    for (const child of this.#children) await this.kill(child);
    await this.end();
  }
}
