import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { systemClock } from '#libs/platform/clock/clock';
import { Db } from '#libs/platform/database/db';
import { DiskFileStore } from '#libs/platform/files/disk-file-store';
import { NotSentError } from '#libs/platform/mail/not-sent-error';
import { SmtpMailer } from '#libs/platform/mail/smtp-mailer';
import { Outgoing } from '#libs/platform/outgoing/outgoing';
import { sendMessage } from '#libs/steps/messages/send-message';
import type { WorkerDeps } from '#libs/steps/worker-deps';
import { bookDog } from '#seed/roads/book-dog';
import { FilmRoom } from '#seed/films';
import { dogNamed, type DemoScheme } from '#seed/demo-scheme';
import { foundScheme } from '#seed/found-scheme';
import { cloneDatabase, type TestDatabase } from '#test/support/database';
import { aMonday } from '#test/support/running-server';
import { Chance } from './kills/chance.js';
import { hiddenMails } from './kills/hidden-mails.js';
import { MoodyMailServer, type Mood } from './kills/moody-mail-server.js';
import { testSecrets } from '#test/support/secrets';

let database: TestDatabase;
let db: Db;
let folder: string;
let mail: MoodyMailServer;
let deps: WorkerDeps;
let scheme: DemoScheme;
let confirmation: string;

beforeAll(async () => {
  database = await cloneDatabase();
  folder = await mkdtemp(path.join(tmpdir(), 'moods-'));
  db = new Db(database.workerUrl, { connections: 2 });
  mail = new MoodyMailServer(new Chance(1));
  const mailer = new SmtpMailer({ url: await mail.start(), from: 'Aldra Basin scheme <server@cotyla.example>' });
  deps = { db, clock: systemClock, files: new DiskFileStore(folder), publicUrl: 'https://cotyla.example', mailer, mailDomain: 'cotyla.example', secrets: testSecrets, outgoing: new Outgoing({ outgoing: { allow: [] } }) };
  const at = aMonday();
  scheme = await foundScheme(db, at);
  const dog = dogNamed(scheme, 'Flint');
  const day = new Date(at.getTime() + 86_400_000).toISOString().slice(0, 10);
  await bookDog({ db, files: deps.files, films: new FilmRoom(), scheme, publicUrl: deps.publicUrl }, { dog, studies: [['elbow', 'threnfold']], at, slot: { day, start: '09:00', minutes: 30, lane: dog.house.lanes[0]! } });
  confirmation = (await look((tx) => tx.message.findFirstOrThrow({ where: { kind: 'confirmation' } }))).id;
}, 60_000);
afterAll(async () => {
  await mail.close();
  await db.close();
  await database.drop();
  await rm(folder, { recursive: true });
});

const look = <T>(work: Parameters<typeof db.system<T>>[1]) => db.system('a test looks', work);
const stateOf = (id: string) => look((tx) => tx.message.findUniqueOrThrow({ where: { id }, select: { state: true, detail: true } }));
const holds = (id: string) => mail.held.filter((held) => held.includes(id)).length;

/** The confirmation once more, a sending of its own. */
async function another(): Promise<string> {
  const [row] = await look((tx) => tx.$queryRaw<{ id: string }[]>`
    INSERT INTO message (order_id, practice_id, once_key, kind, person_id, to_name, to_email, subject, body, documents, subject_id)
    SELECT order_id, practice_id, gen_random_uuid()::text, kind, person_id, to_name, to_email, subject, body, documents, subject_id FROM message WHERE id = ${confirmation}::uuid RETURNING id`);
  return row!.id;
}

describe('a mail server that certainly did not take the mail', () => {
  it.each<[string, Mood, number]>([
    ['refuses the line', 'refusesTheLine', 0],
    ['greets nobody and hangs up', 'saysNothing', 100],
    ['greets nobody for longer than anybody waits', 'saysNothing', 25_000],
    ['puts the mail off', 'putsOff', 0],
  ])('because it %s: the mail waits, and goes once when it is well again', async (_, mood, silenceMs) => {
    const id = await another();
    Object.assign(mail, { mood, silenceMs });
    for (let tries = 0; tries < (silenceMs > 1000 ? 1 : 2); tries++) await expect(sendMessage(deps, id)).rejects.toBeInstanceOf(NotSentError);
    expect([(await stateOf(id)).state, holds(id)]).toEqual(['waiting', 0]);
    mail.mood = 'well';
    for (let tries = 0; tries < 2; tries++) await sendMessage(deps, id);
    expect([(await stateOf(id)).state, holds(id)]).toEqual(['delivered', 1]);
  });
});

it.each<[string, Mood, number]>([['taken', 'takesAndDrops', 1], ['not taken', 'dropsUntaken', 0]])('a line that is cut when the mail was %s: nobody can know, the order says so, and nothing sends it again', async (_, mood, there) => {
  const id = await another();
  mail.mood = mood;
  await sendMessage(deps, id);
  mail.mood = 'well';
  for (let tries = 0; tries < 2; tries++) await sendMessage(deps, id);
  expect(await stateOf(id)).toEqual({ state: 'unknown', detail: expect.stringMatching(/line to the mail server was lost/) as unknown });
  expect(holds(id)).toBe(there);
  expect(await hiddenMails(deps, scheme)).toEqual([]);
});

it('a mail that is refused for good is not tried again, and its order shows what the mail server said', async () => {
  const id = await another();
  mail.mood = 'refusesTheMail';
  await sendMessage(deps, id);
  mail.mood = 'well';
  await sendMessage(deps, id);
  expect(await stateOf(id)).toEqual({ state: 'bounced', detail: expect.stringMatching(/No such mailbox here/) as unknown });
  expect(holds(id)).toBe(0);
  expect(await hiddenMails(deps, scheme)).toEqual([]);
});
