import { execFileSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer as createTls } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';
import type { Channels } from '#libs/contracts/dispatch';
import type { LineAnswer } from '#libs/contracts/line';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import type { Centre } from './channels-support/centre.js';
import { listening } from './channels-support/http-centre.js';
import { objectStoreCentre } from './channels-support/object-store-centre.js';
import { freePort } from './queue-support/free-port.js';
import { Happenings } from './queue-support/until.js';

interface Asked { method: string; url: URL; authorization: string | undefined; bytes: number }

/** What the archive at the other end answers; silent where that is nothing. */
let says: { status: number; type?: string } | undefined;
const asked = new Happenings<Asked>();
let archive: { host: string; close(): Promise<void> };
let closed: string;
let untrusted: { host: string; close(): void };
let store: Centre;
let server: RunningServer;
let manager: Session;
let centre: string;

beforeAll(async () => {
  archive = await listening(async (request, response) => {
    let bytes = 0;
    for await (const part of request) bytes += (part as Buffer).length;
    asked.add({ method: request.method!, url: new URL(request.url!, 'http://archive'), authorization: request.headers.authorization, bytes });
    if (says) response.writeHead(says.status, { 'content-type': says.type ?? 'application/dicom+json' }).end();
  }, () => false);
  closed = `127.0.0.1:${await freePort()}`;
  untrusted = await selfSigned();
  store = await objectStoreCentre();
  server = await startServer({ allow: [archive.host, closed, untrusted.host, new URL(store.channel.address!).host, 'archive.nowhere.invalid:443'] });
  manager = await server.as(server.scheme.houses.weirside.manager.name);
  centre = server.scheme.centres.threnfold.id;
}, 120_000);
afterAll(async () => {
  await server.close();
  await archive.close();
  await store.close();
  untrusted.close();
});
beforeEach(() => {
  says = { status: 200 };
  asked.all.length = 0;
});

const at = (more = '') => `/api/practice/centres/${centre}/channel${more}`;
const dicomweb = (address: string) => ({ kind: 'dicomweb', address, account: 'practice', secret: 'word' });
const last = async (who = manager) => (await who.read<Channels>('/api/practice/channels')).rows.find((row) => row.centre === centre)!.trial;

async function tried(channel: object): Promise<LineAnswer | null> {
  await manager.send(at(), channel);
  expect(await last()).toBeNull();
  await manager.send(at('/try'));
  await server.settled();
  return (await last())!.answer;
}

/** A server whose certificate nobody but itself vouches for. */
async function selfSigned(): Promise<{ host: string; close(): void }> {
  const folder = mkdtempSync(path.join(tmpdir(), 'own-cert-'));
  const [key, cert] = [path.join(folder, 'key.pem'), path.join(folder, 'cert.pem')];
  execFileSync('openssl', ['req', '-x509', '-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes', '-days', '2', '-subj', '/CN=127.0.0.1', '-addext', 'subjectAltName=IP:127.0.0.1', '-keyout', key, '-out', cert], { stdio: 'ignore' });
  const listens = createTls({ key: readFileSync(key), cert: readFileSync(cert) }, (_request, response) => response.end()).listen(0, '127.0.0.1');
  rmSync(folder, { recursive: true });
  await once(listens, 'listening');
  return { host: `127.0.0.1:${(listens.address() as AddressInfo).port}`, close: () => listens.close() };
}

describe('a DICOMweb channel is tried', () => {
  it('by one question that names no dog of anybody, and is said to be reached', async () => {
    expect(await tried(dicomweb(`http://${archive.host}/dicom-web/`))).toBe('reached');
    expect(asked.all).toHaveLength(1);
    const [{ method, url, authorization, bytes }] = asked.all as [Asked];
    expect({ method, path: url.pathname, bytes }).toEqual({ method: 'GET', path: '/dicom-web/studies', bytes: 0 });
    expect(Object.fromEntries(url.searchParams)).toEqual({ StudyInstanceUID: expect.stringMatching(/^2\.25\.\d+$/), limit: '1' });
    expect(authorization).toBe(`Basic ${Buffer.from('practice:word').toString('base64')}`);
    expect(await last()).toMatchObject({ byName: server.scheme.houses.weirside.manager.name, status: 200 });
  });

  it.each<[string, { status: number; type?: string }, LineAnswer]>([
    ['no content', { status: 204 }, 'reached'],
    ['a wrong password', { status: 401 }, 'refused'],
    ['no such service', { status: 404 }, 'noService'],
    ['a page for people', { status: 200, type: 'text/html' }, 'noService'],
    ['a page to sign in on', { status: 401, type: 'text/html' }, 'refused'],
    ['too much to do', { status: 503 }, 'busy'],
    ['another address', { status: 302 }, 'redirect'],
    ['something else', { status: 400 }, 'unexpected'],
  ])('and %s is told apart', async (_, answer, expected) => {
    says = answer;
    expect(await tried(dicomweb(`http://${archive.host}/dicom-web`))).toBe(expected);
  });

  it('where nobody listens, the name is not known, or the certificate is nobody’s', async () => {
    expect(await tried(dicomweb(`http://${closed}/`))).toBe('nobodyListens');
    expect(await tried(dicomweb('https://archive.nowhere.invalid/'))).toBe('nameNotFound');
    expect(await tried(dicomweb(`https://${untrusted.host}/`))).toBe('certificate');
    expect(await last()).toMatchObject({ detail: 'DEPTH_ZERO_SELF_SIGNED_CERT' });
  });

  it('and an address that leads inside is not called, though it was entered when that was allowed', async () => {
    const owner = new pg.Client(server.ownerUrl);
    await owner.connect();
    await owner.query("INSERT INTO centre_channel (practice_id, centre_id, kind, address, at, by, by_name) VALUES ($1, $2, 'dicomweb', 'https://127.0.0.1:9/', now(), 'x', 'x')", [server.scheme.houses.weirside.id, centre]);
    await owner.end();
    await manager.send(at('/try'));
    await server.settled();
    expect(await last()).toMatchObject({ answer: 'inside', status: null });
  });

  it('once at a time, and by another worker when one was killed over it', async () => {
    await manager.send(at(), dicomweb(`http://${archive.host}/dicom-web`));
    says = undefined;
    await server.killingWorker(() => manager.send(at('/try')).then(() => undefined), () => asked.until((all) => all.length === 1));
    await manager.send(at('/try'));
    expect((await last())!.answer).toBeNull();
    says = { status: 200 };
    await server.until(new Date(server.clock.now().getTime() + 4 * 60_000));
    await server.sweep();
    expect((await last())!.answer).toBe('reached');
    expect(await server.look((tx) => tx.channelTrial.count({ where: { answer: null } }))).toBe(0);
  }, 60_000);
});

describe('a signed upload is tried', () => {
  it('by looking for what is not there, and nothing is stored', async () => {
    expect(await tried(store.channel)).toBe('reached');
    expect(store.taken.all).toEqual([]);
  });

  it('and a wrong key is refused', async () => {
    expect(await tried({ ...store.channel, secret: 'another' })).toBe('refused');
  });
});

describe('nothing is tried', () => {
  it.each(['link', 'media'])('where films go by %s', async (kind) => {
    await manager.send(at(), { kind });
    expect((await manager.post(at('/try'))).body).toMatchObject({ code: 'NOT_AT_THIS_STEP', message: 'Films go to this centre by a mail, and no line is there to be tried.' });
  });

  it('by a desk, nor by another practice, which sees no trial of it', async () => {
    await manager.send(at(), dicomweb(`http://${archive.host}/dicom-web`));
    await (await server.as(server.scheme.houses.weirside.desk.name)).post(at('/try')).expect(403);
    const other = await server.as(server.scheme.houses.karsby.manager.name);
    expect((await other.post(at('/try'))).body).toMatchObject({ code: 'NOT_AT_THIS_STEP' });
    expect(await other.read('/api/practice/channels')).toEqual({ rows: [] });
    await server.settled();
    expect(asked.all).toEqual([]);
  });
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
