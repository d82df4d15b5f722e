import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { createApi } from '#apps/api/app';
import { Deps } from '#apps/api/deps';
import { keepCaught } from '#apps/worker/capture';
import { startWorker } from '#apps/worker/worker';
import { addDays } from '#libs/pathway/days';
import { localDay } from '#libs/pathway/zones';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db, type Tx } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import type { FileStore } from '#libs/platform/files/file-store';
import { Limits } from '#libs/platform/limits/limits';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import type { SecretBox } from '#libs/platform/secrets/secret-box';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import { instantOf } from '#libs/steps/record/local-time';
import type { StepDeps } from '#libs/steps/record/step-deps';
import type { WorkerDeps } from '#libs/steps/worker-deps';
import type { DemoScheme } from '#seed/demo-scheme';
import { country } from '#seed/country';
import { foundScheme } from '#seed/found-scheme';
import { demoSignIns } from '#seed/sign-ins';
import { freePort } from '#test/medium/queue-support/free-port';
import { cloneDatabase } from './database.js';
import { kill, startKillable } from './killable.js';
import { MailServer } from './mail-server.js';
import { testSecrets } from './secrets.js';
import { signIn, type Session } from './session.js';

export const PUBLIC_URL = 'https://cotyla.example';

/** Api, worker and mail server over one database of their own, with the register of the demo and no order. */
export interface RunningServer {
  url: string;
  /** Of its database, as the owner of the tables. */
  ownerUrl: string;
  clock: TestClock;
  /** As the api has them, for another process of the program. */
  deps: StepDeps & { files: FileStore };
  /** As the worker has them. */
  workerDeps: WorkerDeps;
  scheme: DemoScheme;
  mail: MailServer;
  /** What broke inside; a test that is not about faults expects nothing here. */
  errors: unknown[];
  /** A look at the tables past all fences. */
  look<T>(work: (tx: Tx) => Promise<T>): Promise<T>;
  /** A session of somebody in the demo's register, by name. */
  as(name: string): Promise<Session>;
  /** Resolves when no job is waiting or running; mail that is due later may stand in the database. */
  settled(): Promise<void>;
  /** Forward to a moment, once all that belongs to the present has been done; then what has become due is done. */
  until(moment: Date | string): Promise<void>;
  /** What the schedule does every half minute, and all that comes of it. */
  sweep(): Promise<void>;
  /** While this goes on the worker is a process of its own, which is killed so much later, or when something has happened, once for each moment; then another takes over. */
  killingWorker(work: () => Promise<void>, ...moments: (number | (() => Promise<unknown>))[]): Promise<void>;
  close(): Promise<void>;
}

/** Sessions and links end by the database's own clock, so tests stand some days ahead of it: on a Monday at nine. */
export function aMonday(): Date {
  let day = addDays(localDay(new Date().toISOString(), country.zone), 3);
  while (new Date(`${day}T12:00:00Z`).getUTCDay() !== 1) day = addDays(day, 1);
  return instantOf(day, '09:00', country.zone);
}

const POLL_MS = 20;

const builtPages = path.resolve(import.meta.dirname, '../../dist/web');

/** With `pages` as in the demo: the built web app, whose mailbox shows the mail, and links in mails lead to this server. */
/** Other tests keep the machine busy; a lock must not run out because of them. */
const LOCK_SECONDS = 60;

export async function startServer({ pages = false, kept, allow = [], secrets = testSecrets }: { pages?: boolean; kept?: string; allow?: string[]; secrets?: SecretBox } = {}): Promise<RunningServer> {
  if (pages && !existsSync(builtPages)) throw new Error('The web app is not built: run the tests with npm test, or node scripts/build.mjs first.');
  const port = pages ? await freePort() : 0;
  const publicUrl = pages ? `http://127.0.0.1:${port}` : PUBLIC_URL;
  const database = await cloneDatabase();
  await prepareQueue({ ownerUrl: database.ownerUrl, logins: ['cotyla_worker'] });
  const folder = kept ?? (await mkdtemp(path.join(tmpdir(), 'road-')));
  const files = new DiskFileStore(folder);
  const clock = new TestClock(aMonday());
  const [apiDb, workerDb] = [new Db(database.apiUrl, { connections: 4 }), new Db(database.workerUrl, { connections: 6 })];
  const look: RunningServer['look'] = (work) => workerDb.system('a test looks', work);
  const scheme = await foundScheme(workerDb, clock.now());
  const errors: unknown[] = [];
  const mail = new MailServer(pages ? (caught) => keepCaught(workerDb, caught) : undefined);
  const mailUrl = await mail.start();
  const mailer = new SmtpMailer({ url: mailUrl, from: 'Aldra Basin scheme <server@cotyla.example>' });
  const settings: Deps['settings'] = { outgoing: { allow }, publicUrl, demo: pages, dataFolder: folder, mail: pages ? { captured: true, from: '' } : { captured: false, url: '', from: '' } };
  if (pages) await writeFile(path.join(folder, 'demo-sign-ins.json'), JSON.stringify(demoSignIns()));
  const api = await createApi({ deps: new Deps(apiDb, clock, files, new Limits(), secrets, settings), ...(pages && { web: builtPages }), log: (error) => errors.push(error) });
  await api.listen(port, '127.0.0.1');
  const outgoing = new Outgoing({ outgoing: { allow } });
  const workerDeps: WorkerDeps = { db: workerDb, clock, files, publicUrl, mailer, outgoing, secrets, mailDomain: 'cotyla.example' };
  const queue = { backend: 'postgres' as const, url: database.workerUrl, namespace: `t${randomUUID().slice(0, 8)}` };
  const startHere = (locks: { stalledCheckSeconds?: number } = {}) => startWorker({
    deps: workerDeps, queue, databaseUrl: database.workerUrl, onError: (error) => errors.push(error), lockSeconds: LOCK_SECONDS, ...locks,
  });
  let worker = await startHere();
  const url = await api.getUrl();

  const outbox = () => look(async (tx) => (await tx.$queryRaw<{ last: bigint | null; due: bigint }[]>`SELECT max(id) AS last, count(*) FILTER (WHERE relayed_at IS NULL AND (not_before IS NULL OR not_before <= ${clock.now()})) AS due FROM outbox`)[0]!);
  const idle = async (): Promise<boolean> => {
    const before = await outbox();
    if (before.due > 0n) return false;
    const counts = await worker.queue.counts();
    if (Object.values(counts).some((c) => c.waiting + c.active > 0)) return false;
    // Nothing was added while the queue was looked at.
    const after = await outbox();
    return after.due === 0n && after.last === before.last;
  };
  const settled = async () => {
    while (!(await idle())) await pause(POLL_MS);
  };
  // Once for what time has changed, once more for what is due because of it.
  const sweep = async () => {
    for (let round = 0; round < 2; round++) {
      await worker.queue.add('sweep', {});
      await settled();
    }
  };

  const sessions = new Map<string, Promise<Session>>();
  const as = (name: string): Promise<Session> => {
    const known = demoSignIns().find((s) => s.name === name);
    if (!known) throw new Error(`Nobody in the register is called ${name}.`);
    const session = sessions.get(name) ?? signIn(url, known.email, known.password);
    sessions.set(name, session);
    return session;
  };

  return {
    url, ownerUrl: database.ownerUrl, clock, deps: { db: apiDb, clock, files, publicUrl }, workerDeps, scheme, mail, errors, look, as, settled, sweep,
    until: async (moment) => {
      await settled();
      if (new Date(moment) < clock.now()) throw new RangeError('This moment has passed.');
      clock.set(moment);
      await look((tx) => tx.$executeRaw`SELECT pg_notify('outbox', '')`);
      await settled();
    },
    killingWorker: async (work, ...moments) => {
      await settled();
      await worker.close(10);
      for (const [i, moment] of moments.entries()) {
        const child = await startKillable({ databaseUrl: database.workerUrl, queue, files: folder, mailUrl, allow, now: clock.now().toISOString() });
        try {
          if (i === 0) await work();
          await (typeof moment === 'number' ? pause(moment) : moment());
        } finally {
          await kill(child);
        }
      }
      worker = await startHere({ stalledCheckSeconds: 1 });
    },
    close: async () => {
      await api.close();
      await worker.close(10);
      await mail.close();
      await outgoing.close();
      await apiDb.close();
      await workerDb.close();
      await database.drop();
      if (!kept) await rm(folder, { recursive: true, force: true });
    },
  };
}
