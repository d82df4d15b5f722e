import { mkdtemp, rm, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Machines } from '#libs/contracts/gateway';
import { COMMITMENT, NOT_SAFE } from '#libs/dicom/commitment';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { reportToMachine } from '#libs/steps/gateway/report-to-machine';
import { describeWithPeer } from '#test/support/peers';
import { startServer, type RunningServer } from '#test/support/running-server';
import { aRadiograph } from './support/a-film.js';
import { ConsoleRoom } from './support/console.js';
import { Modality, type Elements } from './support/modality.js';

let server: RunningServer;
let room: ConsoleRoom;
let machine: Modality;
let folder: string;

const CR = '1.2.840.10008.5.1.4.1.1.1';
const images: string[] = [];
const house = () => Object.values(server.scheme.houses)[0]!;
const numbers = (list: unknown) => [list ?? []].flat().map((item) => (item as Elements).ReferencedSOPInstanceUID);
const reasons = (list: unknown) => [list ?? []].flat().map((item) => [(item as Elements).ReferencedSOPInstanceUID, (item as Elements).FailureReason]);
const machines = async () => (await (await server.as(house().manager.name)).read<Machines>('/api/practice/machines')).rows;

describeWithPeer('storescu', 'an X-ray machine that asks whether its images are safe', () => {
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'films-'));
    server = await startServer({ kept: folder });
    room = await ConsoleRoom.open(server, house().id);
    machine = new Modality(room);
    for (let i = 0; i < 3; i++) {
      images.push(newUid());
      expect((await room.store([writeRadiograph(aRadiograph({ sopUid: images[i]!, instance: i + 1 }))])).code).toBe(0);
    }
  });
  afterAll(async () => {
    await machine.close();
    await room.close();
    await server.close();
    await rm(folder, { recursive: true, force: true });
  });

  it('hears on its own line that all are', async () => {
    const transaction = newUid();
    expect(await machine.ask(transaction, images)).toMatchObject([{ status: 0 }]);
    const [report] = await machine.reports.until((all) => all.length > 0);
    expect(report).toMatchObject({ event: 1, elements: { TransactionUID: transaction } });
    expect(numbers(report!.elements.ReferencedSOPSequence)).toEqual(images);
    expect(report!.elements.FailedSOPSequence).toBeUndefined();
  });

  it('hears of each that never came, or that is of another kind, and keeps those', async () => {
    const [never, before] = [newUid(), machine.reports.all.length];
    await machine.ask(newUid(), [images[0]!, never]);
    const report = (await machine.reports.until((all) => all.length > before)).at(-1)!;
    expect(report.event).toBe(2);
    expect(numbers(report.elements.ReferencedSOPSequence)).toEqual([images[0]]);
    expect(reasons(report.elements.FailedSOPSequence)).toEqual([[never, NOT_SAFE.notHere]]);
    await machine.ask(newUid(), [images[0]!], { sopClass: CR });
    const other = (await machine.reports.until((all) => all.length > before + 1)).at(-1)!;
    expect(reasons(other.elements.FailedSOPSequence)).toEqual([[images[0], NOT_SAFE.anotherKind]]);
  });

  it('is told no when what is kept is no longer what it sent', async () => {
    const { sha256 } = await server.look((tx) => tx.receivedImage.findFirstOrThrow({ where: { sopUid: images[2]! } }));
    await truncate(path.join(folder, sha256.slice(0, 2), sha256.slice(2)), 1000);
    const before = machine.reports.all.length;
    await machine.ask(newUid(), images);
    const report = (await machine.reports.until((all) => all.length > before)).at(-1)!;
    expect(numbers(report.elements.ReferencedSOPSequence)).toEqual(images.slice(0, 2));
    expect(reasons(report.elements.FailedSOPSequence)).toEqual([[images[2], NOT_SAFE.broken]]);
  });

  it('is not understood when it asks about nothing, or for something else', async () => {
    expect(await machine.ask(newUid(), [])).toMatchObject([{ status: 0x0115 }]);
    expect(await machine.ask('no number', images)).toMatchObject([{ status: 0x0115 }]);
    expect(await machine.ask(newUid(), images, { type: 7 })).toMatchObject([{ status: 0x0123 }]);
  });

  it('learns nothing of another practice’s images', async () => {
    const other = Object.values(server.scheme.houses)[1]!;
    const theirs = await ConsoleRoom.open(server, other.id, { calling: 'ELSEWHERE' });
    const stranger = new Modality(theirs);
    await stranger.ask(newUid(), images);
    const [report] = await stranger.reports.until((all) => all.length > 0);
    expect(reasons(report!.elements.FailedSOPSequence)).toEqual(images.map((image) => [image, NOT_SAFE.notHere]));
    await stranger.close();
    await theirs.close();
  });

  it('is called where it listens, and the practice sees what it was told', async () => {
    expect(await machines()).toMatchObject([{ port: null, asked: { at: expect.any(String) as string } }]);
    const port = await machine.listen();
    const manager = await server.as(house().manager.name);
    await manager.send<Machines>(`/api/practice/machines/${(await machines())[0]!.id}/end`);
    await manager.send<Machines>('/api/practice/machines', { name: 'Room 1', aeTitle: room.calling, address: '127.0.0.1', port });
    await manager.post('/api/practice/machines', { name: 'Room 2', aeTitle: 'DXROOM2', address: '127.0.0.1', port: 70_000 }).expect(400);
    const [transaction, before] = [newUid(), machine.reports.all.length];
    expect(await machine.ask(transaction, images.slice(0, 2))).toMatchObject([{ status: 0 }]);
    machine.hangUp();
    const report = (await machine.reports.until((all) => all.length > before)).at(-1)!;
    expect(report).toMatchObject({ event: 1, elements: { TransactionUID: transaction }, from: { calling: room.called, called: room.calling } });
    await server.settled();
    expect(await machines()).toMatchObject([{ name: 'Room 1', port, asked: { images: 2, unsafe: 0, told: true } }]);
  });

  it('that does not take the word, or is not there, has not heard it', async () => {
    const deaf = new Modality(room);
    const at = { host: '127.0.0.1', port: await deaf.listen([0x0110]), called: room.calling, calling: room.called };
    const word = { sopClass: COMMITMENT.sopClass, instance: COMMITMENT.instance, event: 1, elements: { TransactionUID: newUid() } };
    await expect(reportToMachine(at, word)).rejects.toThrow(/did not accept what it was told \(status 110\)/);
    await reportToMachine(at, word);
    expect(deaf.reports.all).toHaveLength(1);
    await deaf.close();
    await expect(reportToMachine(at, word)).rejects.toThrow(/could not be reached/);
  });
});
