import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { readTls } from '#apps/gateway/read-tls';
import { describeWithPeer } from '#test/support/peers';
import { startServer, type RunningServer } from '#test/support/running-server';
import { aRadiograph } from './support/a-film.js';
import { sayTo } from './support/bytes.js';
import { ConsoleRoom } from './support/console.js';

const run = promisify(execFile);
let server: RunningServer;
let room: ConsoleRoom;
let folder: string;

const file = (name: string) => path.join(folder, name);
const machine = (name: string) => ['--enable-tls', file(`${name}.key`), file(`${name}.pem`), '+cf', file('ca.pem')];
const house = () => Object.values(server.scheme.houses)[0]!.id;

/** A key, and a certificate that the CA signed; or one that signed itself. */
async function certificate(openssl: string, name: string, ...signer: string[]): Promise<void> {
  await run(openssl, ['req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-days', '2', '-subj', `/CN=${name}.example`, '-addext', 'subjectAltName=IP:127.0.0.1', '-keyout', file(`${name}.key`), '-out', file(`${name}.pem`), ...signer]);
}

describeWithPeer('storescu', 'over TLS', () => describeWithPeer('openssl', 'an X-ray machine', (openssl) => {
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'tls-'));
    const byCa = () => ['-CA', file('ca.pem'), '-CAkey', file('ca.key'), '-addext', 'basicConstraints=critical,CA:FALSE'];
    await certificate(openssl, 'ca');
    for (const name of ['gateway', 'machine']) await certificate(openssl, name, ...byCa());
    await certificate(openssl, 'stranger');
    server = await startServer();
    const tls = await readTls({ port: 0, keyFile: file('gateway.key'), certFile: file('gateway.pem'), clientCaFile: file('ca.pem') });
    room = await ConsoleRoom.open(server, house(), { tls, limits: { firstWordMs: 500 } });
  }, 60_000);
  afterAll(async () => {
    await room.close();
    await server.close();
    await rm(folder, { recursive: true });
  });

  it('is let in with a certificate of its CA, and what it sends is kept', async () => {
    expect(await room.echo({}, machine('machine'), room.gateway.tlsPort)).toMatchObject({ code: 0 });
    expect(await room.store([writeRadiograph(aRadiograph())], machine('machine'), {}, room.gateway.tlsPort)).toMatchObject({ code: 0 });
    expect(await server.look((tx) => tx.receivedImage.count({ where: { practiceId: house() } }))).toBe(1);
  });

  it('is not let in with a certificate that nobody signed, without one, without TLS, or under a name that nobody knows', async () => {
    const { tlsPort } = room.gateway;
    expect((await room.echo({}, machine('stranger'), tlsPort)).code).not.toBe(0);
    expect((await room.echo({}, ['--anonymous-tls', '+cf', file('ca.pem')], tlsPort)).code).not.toBe(0);
    expect((await room.echo({}, [], tlsPort)).code).not.toBe(0);
    expect((await room.echo({ calling: 'STRANGER' }, machine('machine'), tlsPort)).out).toContain('Called AE Title Not Recognized');
    expect((await room.echo({}, machine('machine'), tlsPort)).code).toBe(0);
  });

  it('is hung up on when it begins no TLS, or begins it with nothing', async () => {
    const secure = { gateway: { ...room.gateway, port: room.gateway.tlsPort! } };
    expect(await sayTo(secure, Buffer.from('GET / HTTP/1.1\r\n\r\n'), { waitMs: 5000 })).toBe('hung up');
    expect(await sayTo(secure, Buffer.alloc(0), { waitMs: 5000 })).toBe('hung up');
  });

  it('finds the program not started when a file is not there', async () => {
    await expect(readTls({ port: 0, keyFile: file('none.key'), certFile: file('gateway.pem'), clientCaFile: undefined })).rejects.toThrow(/GATEWAY_TLS_KEY_FILE names .*none\.key, which cannot be read/);
  });
}));
