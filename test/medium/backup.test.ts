import { randomUUID } from 'node:crypto';
import { appendFile, cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { buffer } from 'node:stream/consumers';
import pg from 'pg';
import { startWorker } from '#apps/worker/worker';
import { backUp } from '#libs/platform/backup/back-up';
import { tableFile, type Manifest } from '#libs/platform/backup/manifest';
import { restore } from '#libs/platform/backup/restore';
import { tablesOf } from '#libs/platform/backup/tables';
import { tombstoneFile } from '#libs/platform/backup/tombstones';
import { TestClock } from '#libs/platform/clock/test-clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import { prepareQueue } from '#libs/platform/queue/prepare-queue';
import { verifyRequester } from '#libs/steps/requests/answer-request';
import { eraseRequester } from '#libs/steps/requests/erase-requester';
import { openRequest } from '#libs/steps/requests/open-request';
import { writeTombstones } from '#libs/steps/requests/write-tombstones';
import { sweep } from '#libs/steps/sweep';
import type { WorkerDeps } from '#libs/steps/worker-deps';
import { fillDemo } from '#seed/fill-demo';
import { owners } from '#seed/owners';
import type { Road } from '#seed/roads/road';
import { plans } from '#seed/scenario';
import { cloneDatabase, type TestDatabase } from '#test/support/database';
import { MailServer } from '#test/support/mail-server';
import { testSecrets } from '#test/support/secrets';

// A confirmation, a letter, a package wait for a worker; two more have their films and papers.
const DOGS = ['Nettle', 'Cinder', 'Corrie', 'Heron', 'Kestrel'];
const PUBLIC_URL = 'https://cotyla.example';
const now = new Date();

let base: string;
let original: TestDatabase;
let roads: Road[];
let made: Manifest;
const filesOf = (name: string) => new DiskFileStore(path.join(base, `${name}-files`));
const backupFolder = () => path.join(base, 'backup');
const databases: TestDatabase[] = [];

const newDatabase = async (): Promise<TestDatabase> => {
  const database = await cloneDatabase();
  databases.push(database);
  return database;
};

beforeAll(async () => {
  base = await mkdtemp(path.join(tmpdir(), 'backup-'));
  original = await newDatabase();
  const db = new Db(original.workerUrl, { connections: 4 });
  roads = (await fillDemo({ db, files: filesOf('original'), publicUrl: PUBLIC_URL, now, chosen: plans.filter((p) => DOGS.includes(p.dog)) }))!;
  await db.close();
  made = await backUp({ databaseUrl: original.ownerUrl, files: filesOf('original'), folder: backupFolder(), now });
}, 120_000);
afterAll(async () => {
  for (const database of databases) await database.drop();
  await rm(base, { recursive: true, force: true });
});

async function asOwner<T>(database: TestDatabase, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client(database.ownerUrl);
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

/** Every row of every table; what was handed to a queue is not the same before and after. */
const contentOf = (database: TestDatabase): Promise<Record<string, string>> => asOwner(database, async (client) => {
  const lines: Record<string, string> = {};
  for (const { name } of await tablesOf(client)) {
    const row = name === 'outbox' ? "(to_jsonb(t) - 'relayed_at')::text" : 't::text';
    const { rows } = await client.query<{ line: string }>(`SELECT count(*) || ' ' || COALESCE(md5(string_agg(${row}, '|' ORDER BY ${row})), '') AS line FROM ${client.escapeIdentifier(name)} t`);
    lines[name] = rows[0]!.line;
  }
  return lines;
});

const restoreInto = (database: TestDatabase, files: string, more: { folder?: string; tombstones?: string[] } = {}) => restore({ databaseUrl: database.ownerUrl, files: filesOf(files), folder: more.folder ?? backupFolder(), tombstones: more.tombstones ?? [] });

it('gives back every row of every table and every file, byte for byte', async () => {
  const copy = await newDatabase();
  const before = await contentOf(original);
  await restoreInto(copy, 'copy');
  expect(await contentOf(copy)).toEqual(before);
  expect(Object.values(before).filter((line) => !line.startsWith('0 ')).length).toBeGreaterThan(25);
  expect(made.files.length).toBeGreaterThan(10);
  for (const { sha256, bytes } of made.files) expect((await buffer(await filesOf('copy').read(sha256))).length).toBe(bytes);
  // What is numbered goes on from where it was.
  await asOwner(copy, async (client) => {
    const next = async (sequence: string) => BigInt((await client.query<{ n: string }>('SELECT nextval($1::regclass) AS n', [sequence])).rows[0]!.n);
    expect(await next('fact_seq_seq')).toBeGreaterThan(BigInt(made.sequences.find((s) => s.name === 'fact_seq_seq')!.last));
    // The fences stand again.
    expect((await client.query<{ n: number }>("SELECT count(*)::int AS n FROM pg_trigger WHERE NOT tgisinternal AND tgenabled = 'D'")).rows[0]!.n).toBe(0);
  });
}, 60_000);

it('is as of one moment: what is written while it is made is wholly in it or not at all', async () => {
  const db = new Db(original.workerUrl, { connections: 2 });
  let writing = true;
  const writer = (async () => {
    for (let i = 0; writing; i++) {
      await db.system('a test writes', async (tx) => {
        const id = randomUUID();
        await tx.audit.create({ data: { by: 'a test', role: 'none', action: 'pair', subject: id } });
        await tx.outbox.create({ data: { job: 'sweep', payload: { pair: id }, relayedAt: now } });
      });
    }
  })();
  const folder = path.join(base, 'while-writing');
  await backUp({ databaseUrl: original.ownerUrl, files: filesOf('original'), folder, now });
  writing = false;
  await writer;
  const has = async (table: string, pattern: RegExp) => [...(await readFile(tableFile(folder, table), 'utf8')).matchAll(pattern)].map((m) => m[1]).sort();
  expect(await has('audit', /\tpair\t([0-9a-f-]{36})/g)).toEqual(await has('outbox', /"pair": "([0-9a-f-]{36})"/g));
  await db.system('a test tidies up', (tx) => tx.$executeRaw`DELETE FROM outbox WHERE payload ? 'pair'`);
  await db.close();
}, 60_000);

describe('is refused, and changes nothing,', () => {
  const damaged = async (name: string, change: (folder: string) => Promise<void>): Promise<string> => {
    const folder = path.join(base, name);
    await cp(backupFolder(), folder, { recursive: true });
    await change(folder);
    return folder;
  };
  const refusals: [string, (folder: string) => Promise<void>, RegExp][] = [
    ['when a table was changed', (folder) => appendFile(tableFile(folder, 'person'), 'x'), /Table person .* is not as it was written/],
    ['when a table is missing', (folder) => rm(tableFile(folder, 'person')), /Table person is missing/],
    ['when the manifest was changed', (folder) => appendFile(path.join(folder, 'manifest.json'), ' '), /manifest .* is not as it was written/],
    ['when it was cut short', (folder) => rm(path.join(folder, 'manifest.sha256')), /not a finished backup/],
    ['when a film was changed', async (folder) => writeFile(path.join(folder, 'files', made.files[0]!.sha256.slice(0, 2), made.files[0]!.sha256.slice(2)), 'x'), /./],
    ['when a tombstone cannot be read', (folder) => appendFile(path.join(folder, 'tombstones.jsonl'), 'half a li\n'), /Line 1 .* is not a tombstone/],
  ];
  it.each(refusals)('%s', async (what, change, says) => {
    const empty = await newDatabase();
    const before = await contentOf(empty);
    const folder = await damaged(what.replaceAll(' ', '-'), change);
    await expect(restoreInto(empty, what.replaceAll(' ', '-'), { folder })).rejects.toThrow(says);
    expect(await contentOf(empty)).toEqual(before);
  });

  it('into a database that holds something', async () => {
    const before = await contentOf(original);
    await expect(restoreInto(original, 'nowhere')).rejects.toThrow(/The database is not empty/);
    expect(await contentOf(original)).toEqual(before);
  });

  it('into a database with other migrations', async () => {
    const older = await newDatabase();
    await asOwner(older, (client) => client.query('DELETE FROM _prisma_migrations WHERE migration_name = (SELECT max(migration_name) FROM _prisma_migrations)'));
    await expect(restoreInto(older, 'nowhere')).rejects.toThrow(/Restore it with the version of the program that made it/);
  });

  it('into a folder that holds a backup', async () => {
    await expect(backUp({ databaseUrl: original.ownerUrl, files: filesOf('original'), folder: backupFolder(), now })).rejects.toThrow(/is not empty. Name a new folder/);
  });
});

describe('after a restore', () => {
  const clock = new TestClock(now);
  const mail = new MailServer();
  const errors: unknown[] = [];
  let restored: TestDatabase;
  let db: Db;
  let deps: WorkerDeps;
  let worker: Awaited<ReturnType<typeof startWorker>>;
  const road = (dog: string) => roads.find((r) => r.dog.call === dog)!;
  /** Erased in the original only after the backup was made. */
  const erased = () => road('Heron').dog.person;
  const settled = async () => {
    for (;;) {
      const due = await db.system('a test looks', async (tx) => (await tx.$queryRaw<{ n: bigint }[]>`SELECT count(*) AS n FROM outbox WHERE relayed_at IS NULL AND (not_before IS NULL OR not_before <= ${clock.now()})`)[0]!.n);
      if (due === 0n && Object.values(await worker.queue.counts()).every((c) => c.waiting + c.active === 0)) return;
      await pause(25);
    }
  };

  beforeAll(async () => {
    const ledger = tombstoneFile(base);
    const before = new Db(original.workerUrl, { connections: 2 });
    const { manager } = road('Heron').house;
    const asManager = { db: before, clock, publicUrl: PUBLIC_URL };
    const { rows } = await openRequest(asManager, manager, { person: erased().id, kind: 'erasure', asked: 'To be forgotten.', received: now.toISOString().slice(0, 10) });
    await verifyRequester(asManager, manager, rows[0]!.id, 'Showed a passport at the desk.');
    await eraseRequester(asManager, manager, rows[0]!.id);
    const mailer = new SmtpMailer({ url: await mail.start(), from: 'Aldra Basin scheme <server@cotyla.example>' });
    await writeTombstones({ ...asManager, files: filesOf('original'), mailer, mailDomain: 'cotyla.example', secrets: testSecrets, outgoing: new Outgoing({ outgoing: { allow: [] } }), tombstones: ledger });
    await before.close();

    restored = await newDatabase();
    await prepareQueue({ ownerUrl: restored.ownerUrl, logins: ['cotyla_worker'] });
    expect((await restoreInto(restored, 'restored', { tombstones: [ledger] })).erasedAgain).toBe(1);
    db = new Db(restored.workerUrl, { connections: 6 });
    deps = { db, clock, files: filesOf('restored'), publicUrl: PUBLIC_URL, mailer, mailDomain: 'cotyla.example', secrets: testSecrets, outgoing: new Outgoing({ outgoing: { allow: [] } }) };
  }, 60_000);
  afterAll(async () => {
    await worker.close(10);
    await mail.close();
    await db.close();
    expect(errors).toEqual([]);
  });

  it('nothing can reach a person who was erased after the backup was made, before any worker runs', async () => {
    const row = await db.system('a test looks', (tx) => tx.person.findUniqueOrThrow({ where: { id: erased().id } }));
    expect(row).toMatchObject({ name: 'Erased on request', email: null, phone: null, address: null, channel: 'none' });
    expect(row.erasedAt).not.toBeNull();
    const open = await db.system('a test looks', (tx) => tx.message.count({ where: { personId: erased().id, OR: [{ state: 'waiting' }, { NOT: { toEmail: '' } }] } }));
    expect(open).toBe(0);
    expect(await db.system('a test looks', (tx) => tx.link.count({ where: { personId: erased().id, revokedAt: null } }))).toBe(0);
  });

  it('the worker sends what was due, each once, and a second sweep sends nothing', async () => {
    const due = await db.system('a test looks', (tx) => tx.message.findMany({ where: { state: 'waiting', OR: [{ notBefore: null }, { notBefore: { lte: clock.now() } }] }, select: { id: true, kind: true } }));
    expect(due.map((m) => m.kind)).toEqual(expect.arrayContaining(['confirmation', 'result', 'package']));
    worker = await startWorker({ deps, queue: { backend: 'postgres', url: restored.workerUrl, namespace: `b${randomUUID().slice(0, 8)}` }, databaseUrl: restored.workerUrl, onError: (error) => errors.push(error) });
    await settled();
    const ids = () => mail.all.map((m) => m.messageId).sort();
    const sent = await db.system('a test looks', (tx) => tx.message.findMany({ where: { id: { in: due.map((m) => m.id) }, state: 'delivered' }, select: { id: true } }));
    expect(sent.length).toBeGreaterThanOrEqual(3);
    expect(ids()).toEqual([...new Set(ids())]);
    expect(ids()).toEqual(expect.arrayContaining(sent.map((m) => `<${m.id}@cotyla.example>`)));
    const first = ids();
    for (const minutes of [5, 30]) {
      await sweep({ ...deps, clock: new TestClock(new Date(now.getTime() + minutes * 60_000)) });
      await settled();
    }
    expect(ids()).toEqual(first);
    expect(mail.to(owners.find((o) => o.name === erased().name)!.mail!)).toEqual([]);
  }, 60_000);

  it('the orders of the erased person say so', async () => {
    const facts = await db.system('a test looks', (tx) => tx.fact.findMany({ where: { orderId: road('Heron').order, type: 'personErased' } }));
    expect(facts.map((f) => (f.body as { person: string }).person)).toEqual([erased().id]);
  });
});
