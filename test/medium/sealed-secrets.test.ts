import { randomBytes } from 'node:crypto';
import { mkdtemp, readFile, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';
import type { Channels } from '#libs/contracts/dispatch';
import type { Webhooks } from '#libs/contracts/integrations';
import type { ResultsInScreen } from '#libs/contracts/results-in';
import { backUp } from '#libs/platform/backup/back-up';
import { lostSecrets } from '#libs/platform/secrets/lost-secrets';
import { sealStored } from '#libs/platform/secrets/seal-stored';
import { SecretBox } from '#libs/platform/secrets/secret-box';
import { lead } from '#seed/practices';
import { Receiver } from '#test/support/receiver';
import { CentreComputer } from '#test/support/results-in';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { throughTheVisit } from '#test/support/visit-legs';
import type { Centre } from './channels-support/centre.js';
import { dicomwebCentre } from './channels-support/dicomweb-centre.js';

const [first, second] = [randomBytes(32), randomBytes(32)];
/** With which keys the server stands now, as if it had been started with them. */
let stands = new SecretBox([first]);
const secrets = { get keyId() { return stands.keyId; }, seal: (...of: [string, string]) => stands.seal(...of), open: (...of: [string, string]) => stands.open(...of), knows: (of: string | null) => stands.knows(of) } as unknown as SecretBox;

let server: RunningServer;
let manager: Session;
let scheme: Session;
let owner: pg.Client;
let archive: Centre;
let receiver: Receiver;
let computer: CentreComputer;
let webhook: string;
/** What nobody may find. */
const words: string[] = [];

const channelPath = () => `/api/practice/centres/${server.scheme.centres.threnfold.id}/channel`;
const enter = () => manager.send(channelPath(), archive.channel);
const channel = async () => (await manager.read<Channels>('/api/practice/channels')).rows.find((row) => row.kind === 'dicomweb')!;
const webhooks = () => manager.read<Webhooks>('/api/practice/webhooks');
async function tried() {
  await manager.send(`${channelPath()}/try`);
  await server.settled();
  return (await channel()).trial!.answer;
}
async function called() {
  await manager.send(`/api/practice/webhooks/${webhook}/test`);
  await server.settled();
  const { deliveries } = await webhooks();
  return deliveries.sort((a, b) => b.at.localeCompare(a.at))[0]!.tries.at(-1)!.answer;
}
/** Whether the centre's computer is known by its signature; what it sends is no reading of anybody's. */
const known = async () => (await computer.send({ format: 'cotyla-results-1', readings: [] })).status !== 401;
const stored = async () => (await owner.query<{ secret: string }>('SELECT secret FROM centre_channel_secret UNION ALL SELECT secret FROM webhook UNION ALL SELECT earlier_secret FROM webhook WHERE earlier_secret IS NOT NULL UNION ALL SELECT secret FROM centre_key')).rows.map((row) => row.secret);
/** Another second for each test call, so that the newest is known. */
const laterOn = () => server.clock.advance({ minutes: 1 });

beforeAll(async () => {
  archive = await dicomwebCentre();
  receiver = await new Receiver().start();
  server = await startServer({ allow: [receiver.place, new URL(archive.channel.address!).host], secrets });
  owner = new pg.Client(server.ownerUrl);
  await owner.connect();
  manager = await server.as(server.scheme.houses.weirside.manager.name);
  scheme = await server.as(lead.name);
  await enter();
  const made = await manager.send<Webhooks>('/api/practice/webhooks', { name: 'Practice software', address: receiver.address, events: ['dog.died'] });
  webhook = made.rows[0]!.id;
  const changed = await manager.send<Webhooks>(`/api/practice/webhooks/${webhook}/secret`);
  computer = await CentreComputer.of(server, scheme, server.scheme.centres.threnfold.id);
  const upload = { kind: 'objectStore', address: archive.channel.address!, bucket: 'films', account: 'practice', secret: randomBytes(24).toString('hex') };
  await manager.send(`/api/practice/centres/${server.scheme.centres.sluiceGreen.id}/channel`, upload);
  words.push(upload.secret, made.secret!.secret, changed.secret!.secret, computer.made.secret);
}, 120_000);
afterAll(async () => {
  await owner.end();
  await server.close();
  await archive.close();
  receiver.close();
});
beforeEach(laterOn);

it('what is sealed is used as before: the archive lets us in, the call is signed, the centre’s computer is known', async () => {
  expect([await tried(), await called(), await known()]).toEqual(['reached', 'taken', true]);
  expect(receiver.heard.at(-1)!.headers['webhook-signature']).toMatch(/^v1=[0-9a-f]{64} v1=[0-9a-f]{64}$/);
  expect((await stored()).map((secret) => secret.split('.').slice(0, 3).join('.'))).toEqual(Array(5).fill(`sealed.v1.${stands.keyId}`));
});

it('nothing that a dump or a backup holds contains a secret, nor the key', async () => {
  const folder = await mkdtemp(path.join(tmpdir(), 'sealed-'));
  await backUp({ databaseUrl: server.ownerUrl, files: server.deps.files, folder: path.join(folder, 'backup'), now: new Date() });
  const texts: string[] = [];
  for (const file of await readdir(folder, { recursive: true, withFileTypes: true })) if (file.isFile()) texts.push((await readFile(path.join(file.parentPath, file.name))).toString('latin1'));
  const tables = await owner.query<{ name: string }>("SELECT format('%I.%I', schemaname, tablename) AS name FROM pg_tables WHERE schemaname NOT IN ('pg_catalog', 'information_schema')");
  for (const { name } of tables.rows) texts.push(...(await owner.query<{ row: string }>(`SELECT t::text AS row FROM ${name} t`)).rows.map(({ row }) => row));
  await rm(folder, { recursive: true });
  expect(texts.join('\n')).toContain(stands.keyId);
  for (const word of [...words, first.toString('base64'), first.toString('base64url'), first.toString('hex')]) expect(texts.filter((text) => text.includes(word))).toEqual([]);
}, 60_000);

describe('on a server that has another key, as after a restore without it', () => {
  beforeAll(() => { stands = new SecretBox([second]); });

  it('each place says so, and what to do', async () => {
    expect(await lostSecrets(server.ownerUrl, stands)).toEqual({ secrets: 4, keys: [new SecretBox([first]).keyId] });
    expect(await channel()).toMatchObject({ secret: true, secretLost: true });
    expect((await webhooks()).rows).toMatchObject([{ secretLost: true }]);
    expect((await scheme.read<ResultsInScreen>('/api/results-in?as=lead')).keys!.rows).toMatchObject([{ secretLost: true }]);
    expect([await tried(), await called()]).toEqual(['secretLost', 'secretLost']);
    const refused = await computer.send({ format: 'cotyla-results-1', readings: [] });
    expect([refused.status, (refused.body as { message: string }).message]).toEqual([401, 'This server cannot read the secret of this key any more. Whoever made the key ends it and makes another. Nothing was changed.']);
  });

  it('films stop with a sentence, go on once the password was entered anew, and nothing broke', async () => {
    const on = await Road.book(server, { dog: 'Gale', studies: [['elbow', 'threnfold']], inDays: 1 });
    await throughTheVisit(on);
    await on.act('desk', 'seal', on.study().id, {});
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    await on.look();
    expect(on.study().sends[0]!.delivery).toMatchObject({ state: 'stopped', words: expect.stringMatching(/^The password of this channel is lost\. It cannot be read: it was sealed with the key [0-9a-f]{8}, which this server does not have\. Enter it anew/) });
    expect(archive.taken.all).toEqual([]);
    await enter();
    expect(await channel()).toMatchObject({ secretLost: false });
    await (await on.as('desk')).send(`/api/orders/${on.id}/problems/${on.screen.problems[0]!.id}/retry`);
    await server.settled();
    expect((await on.look()).studies[0]!.sends[0]!).toMatchObject({ outcome: 'handedOver', delivery: { state: 'arrived' } });
    expect(server.errors).toEqual([]);
  }, 60_000);

  it('a call waits for the key and goes when a new secret is made', async () => {
    await manager.send(`/api/practice/webhooks/${webhook}/secret`);
    laterOn();
    expect(await called()).toBe('taken');
    expect(receiver.heard.at(-1)!.headers['webhook-signature']).toMatch(/^v1=[0-9a-f]{64}$/);
  });
});

it('when the key is back beside the new one, all is sealed by the new one, once, and the old one is needed no more', async () => {
  stands = new SecretBox([second, first]);
  expect(await sealStored(server.workerDeps.db, stands)).toEqual({ sealed: 4, lost: 0 });
  expect(await sealStored(server.workerDeps.db, stands)).toEqual({ sealed: 0, lost: 0 });
  stands = new SecretBox([second]);
  expect([await tried(), await called(), await known()]).toEqual(['reached', 'taken', true]);
});

it('what stood in plain text is sealed at the start of the worker, also of keys that were ended, and works on', async () => {
  const ended = await CentreComputer.of(server, scheme, server.scheme.centres.sluiceGreen.id);
  await scheme.send(`/api/results-in/keys/${ended.made.key}/end?as=lead`);
  await owner.query('ALTER TABLE centre_key DISABLE TRIGGER USER');
  await owner.query('UPDATE centre_key SET secret = $2 WHERE id = $1', [computer.made.key, computer.made.secret]);
  await owner.query('UPDATE centre_key SET secret = $2 WHERE id = $1', [ended.made.key, ended.made.secret]);
  await owner.query('ALTER TABLE centre_key ENABLE TRIGGER USER');
  await owner.query("UPDATE centre_channel_secret s SET secret = 'word' FROM centre_channel c WHERE c.id = s.channel_id");
  await server.killingWorker(() => Promise.resolve()); // no kill: it is stopped and started
  expect((await stored()).length).toBeGreaterThan(6);
  for (const secret of await stored()) expect(secret).toMatch(new RegExp(`^sealed\\.v1\\.${stands.keyId}\\.`));
  expect([await tried(), await known()]).toEqual(['reached', true]);
});

it('a secret that was moved to another row does not open there', async () => {
  await enter();
  await owner.query('UPDATE centre_channel_secret SET secret = (SELECT secret FROM centre_channel_secret WHERE channel_id <> $1 LIMIT 1) WHERE channel_id = $1', [(await channel()).id]);
  expect(await tried()).toBe('secretLost');
  expect(server.errors).toEqual([]);
});
