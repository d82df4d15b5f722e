import { connect } from 'node:net';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { describeWithPeer } from '#test/support/peers';
import { startServer, type RunningServer } from '#test/support/running-server';
import { aRadiograph } from './support/a-film.js';
import { associate, data, DX, sayTo, storeCommand } from './support/bytes.js';
import { ConsoleRoom } from './support/console.js';

const ECHO = '1.2.840.10008.1.1';
let server: RunningServer;
let room: ConsoleRoom;

const files = (many: number) => Array.from({ length: many }, () => writeRadiograph(aRadiograph({ sopUid: newUid() })));
const kept = () => server.look((tx) => tx.receivedImage.count());
/** A line that was let in and then says nothing. */
const holdLine = () => new Promise<{ hangUp: () => Promise<void> }>((resolve) => {
  const line = connect(room.gateway.port, '127.0.0.1', () => line.write(associate(room, ECHO)));
  line.once('data', () => resolve({ hangUp: () => new Promise((gone) => line.once('close', () => gone()).end()) }));
});

describeWithPeer('storescu', 'one machine among others', () => {
  beforeAll(async () => {
    server = await startServer();
    room = await ConsoleRoom.open(server, Object.values(server.scheme.houses)[0]!.id, { limits: { maxLines: 3, maxImages: 2, maxImageMs: 1000, firstWordMs: 300 } });
  });
  afterAll(async () => {
    await room.close();
    await server.close();
  });

  it('is told to call later while it has as many lines as one machine may have', async () => {
    const lines = await Promise.all([holdLine(), holdLine(), holdLine()]);
    const { code, out } = await room.echo();
    expect([code !== 0, out]).toEqual([true, expect.stringMatching(/Rejected Transient/)]);
    await lines[0]!.hangUp();
    await room.log.until((all) => all.some((line) => line.includes('has 3 lines already')));
    expect((await room.echo()).code).toBe(0);
    for (const line of lines.slice(1)) await line.hangUp();
  });

  it('is hung up on when it says nothing, or stays after it was turned away or took its leave', async () => {
    expect(await sayTo(room, Buffer.alloc(0), { waitMs: 5000 })).toBe('hung up');
    expect(await sayTo(room, associate({ called: 'NOBODY', calling: 'STRANGER' }, ECHO), { waitMs: 5000 })).toBe('hung up');
    const leave = Buffer.from([5, 0, 0, 0, 0, 4, 0, 0, 0, 0]);
    expect(await sayTo(room, associate(room, ECHO), { then: leave, waitMs: 5000 })).toBe('hung up');
  });

  it('sends no more images on one line than are taken, and those before are kept', async () => {
    const { code, out } = await room.store(files(3));
    expect([code !== 0, (out.match(/Store Response \(Success\)/g) ?? []).length, out]).toEqual([true, 2, expect.stringMatching(/0xa700|Refused/i)]);
    expect(await kept()).toBe(2);
  });

  it('is cut off in an image that takes too long, of which nothing is kept', async () => {
    const part = Buffer.concat([data(true, storeCommand(newUid())), data(false, writeRadiograph(aRadiograph()).subarray(400, 10_000), false)]);
    expect(await sayTo(room, associate(room, DX), { then: part, waitMs: 5000 })).toBe('hung up');
    await room.log.until((lines) => lines.some((line) => line.includes('was not kept: the image broke off')));
    expect(await server.deps.files.clearStaging(new Date(Date.now() + 60_000))).toBe(0);
    expect(await kept()).toBe(2);
  });
});
