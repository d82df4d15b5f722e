import { COMMITMENT } from '#libs/dicom/commitment';
import { PERFORMED_STEP } from '#libs/dicom/performed-step';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { newUid } from '#libs/dicom/uids';
import { describeWithPeer } from '#test/support/peers';
import { startServer, type RunningServer } from '#test/support/running-server';
import { aRadiograph, shades } from './support/a-film.js';
import { associate, command, data, DX, pdu, sayTo, storeCommand } from './support/bytes.js';
import { ConsoleRoom } from './support/console.js';

let server: RunningServer;
let room: ConsoleRoom;

const WORKLIST = '1.2.840.10008.5.1.4.31';
const say = (bytes: Buffer, more: Parameters<typeof sayTo>[2] = {}) => sayTo(room, bytes, more);
const request = (abstract: string) => associate(room, abstract);

describeWithPeer('storescu', 'the port of the machines', () => {
  beforeAll(async () => {
    server = await startServer();
    room = await ConsoleRoom.open(server, Object.values(server.scheme.houses)[0]!.id, { limits: { maxImageBytes: 300_000, maxMessageBytes: 300_000 } });
  });
  afterAll(async () => {
    await room.close();
    await server.close();
  });
  afterEach(async () => {
    // whatever was said, the next one is answered
    expect((await room.echo()).code).toBe(0);
    expect(await kept()).toBe(0);
  });

  const kept = async () => (await server.look((tx) => tx.receivedImage.count()));

  it('hangs up on what is no message, before it has gathered any of it', async () => {
    const bytes = Buffer.from(Uint8Array.from({ length: 4096 }, (_, i) => (i * 7919 + 13) % 251));
    for (const wrong of [bytes, pdu(9, 10), pdu(0, 0), pdu(1, 0xffffffff), pdu(4, 0xfffffff0), Buffer.from('GET / HTTP/1.1\r\n\r\n')]) expect(await say(wrong)).toBe('hung up');
  });

  it('is not disturbed by lines that say nothing, half of something, or break off', async () => {
    const whole = request('1.2.840.10008.1.1');
    for (const part of [0, 3, 6, 60, whole.length - 1]) await say(whole.subarray(0, part), { hangUp: true });
    await say(Buffer.concat([whole, pdu(7, 4, Buffer.alloc(4))]), { hangUp: true });
  });

  it('does nothing for a line that has not said who it is, or says it twice', async () => {
    const echo = pdu(4, 10, Buffer.from([0, 0, 0, 6, 1, 3, 0, 0, 0, 0]));
    await say(echo);
    await say(Buffer.concat([request('1.2.840.10008.1.1'), request('1.2.840.10008.1.1')]));
  });

  it.each([0, 2, 0x7fffffff])('lives on when a part of a message claims %d bytes', async (length) => {
    const part = Buffer.alloc(6);
    part.writeUInt32BE(length, 0);
    part[4] = 1;
    part[5] = 3;
    await say(Buffer.concat([request('1.2.840.10008.1.1'), pdu(4, 6, part)]));
  });

  it('keeps nothing of an image that is larger than is taken, and says so', async () => {
    const large = writeRadiograph(aRadiograph({ pixels: { rows: 500, columns: 700, bits: 12, values: shades(500, 700, 12) } }));
    const { code, out } = await room.store([large]);
    expect(code).not.toBe(0);
    expect(out).toMatch(/0xa700|Refused/i);
  });

  it('keeps nothing of an image whose pixels are missing, and says so', async () => {
    // The same numbers in both, which are not always of one length.
    const film = { ...aRadiograph(), sopUid: newUid() };
    const short = writeRadiograph({ ...film, pixels: { rows: 400, columns: 160, bits: 12, values: film.pixels.values } });
    expect(short.length).toBe(writeRadiograph(film).length);
    const { code, out } = await room.store([short]);
    expect(code).not.toBe(0);
    expect(out).toMatch(/0xc000|Cannot/i);
  });

  it('builds no file name from what it is told', async () => {
    const evil = writeRadiograph(aRadiograph({ sopUid: '../../../../tmp/evil' }));
    const { code } = await room.store([evil], ['--no-uid-checks']);
    expect(code).not.toBe(0);
  });

  it('tells nobody the worklist who asks for nothing', async () => {
    expect((await room.find(['PatientName'])).out).toMatch(/0xa900|DataSetDoesNotMatch|Failed/i);
    expect((await room.find(['PatientName', '(0040,0100)[0].Modality=DX'])).out).not.toMatch(/0xa900|Failed/i);
  });

  it('keeps nothing of an image whose machine broke off in the middle of it', async () => {
    const start = Buffer.concat([data(true, storeCommand(newUid())), data(false, writeRadiograph(aRadiograph()).subarray(400, 20_000), false)]);
    await say(request(DX), { then: start });
    await room.log.until((lines) => lines.some((line) => line.includes('was not kept: the image broke off')));
    expect(await server.deps.files.clearStaging(new Date(Date.now() + 60_000))).toBe(0);
  });

  it('gathers no question that has no end', async () => {
    const endless = Buffer.concat(Array.from({ length: 40 }, () => data(false, Buffer.alloc(10_000), false)));
    expect(await say(request(WORKLIST), { then: Buffer.concat([data(true, command(0x20, { 0x0002: WORKLIST })), endless]) })).toBe('hung up');
    await room.log.until((lines) => lines.some((line) => line.includes('a message without an end')));
  });

  it('believes no length that a part of a question or of an image claims', async () => {
    const huge = Buffer.from([0x08, 0, 0x50, 0, 0x55, 0x4e, 0, 0, 0xf0, 0xff, 0xff, 0xff, 0x41, 0x42]);
    for (const [sopClass, field] of [[WORKLIST, 0x20], [PERFORMED_STEP, 0x140], [COMMITMENT.sopClass, 0x130]] as const)
      await say(request(sopClass), { then: Buffer.concat([data(true, command(field, { 0x0002: sopClass, 0x0003: sopClass })), data(false, huge)]) });
    await say(request(DX), { then: Buffer.concat([data(true, storeCommand(newUid())), data(false, huge)]) });
    await room.log.until((lines) => lines.filter((line) => line.includes('was not kept')).length >= 2);
    expect(process.memoryUsage().arrayBuffers).toBeLessThan(300 * 1024 * 1024);
  });

  it('lives through an image that says neither what it is nor its number', async () => {
    await say(request(DX), { then: Buffer.concat([data(true, command(0x01, {})), data(false, Buffer.alloc(2000))]) });
    await say(request(DX), { then: data(false, Buffer.alloc(2000)) });
  });

  it('lives through three hundred requests with some bytes changed, whatever they are', async () => {
    const [whole, random] = [request(DX), chance(7)];
    for (let turn = 0; turn < 300; turn += 30)
      await Promise.all(Array.from({ length: 30 }, () => {
        const bytes = Buffer.from(whole);
        for (let i = 0; i < 3; i++) bytes[Math.floor(random() * bytes.length)] = Math.floor(random() * 256);
        return say(Buffer.concat([bytes, data(true, storeCommand(newUid()))]), { waitMs: 100 });
      }));
  });
});

/** The same numbers in every run. */
function chance(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}
