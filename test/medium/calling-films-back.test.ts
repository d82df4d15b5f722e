import { randomUUID } from 'node:crypto';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { addDays } from '#libs/pathway/days';
import { deliverPackage } from '#libs/steps/dispatch/deliver';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { throughTheVisit } from '#test/support/visit-legs';
import { noteIn } from './channels-support/called-back.js';
import type { Centre } from './channels-support/centre.js';
import { dicomwebCentre } from './channels-support/dicomweb-centre.js';

let server: RunningServer;
let archive: Centre;
/** All with films of both elbows, which both centres read. */
beforeAll(async () => {
  archive = await dicomwebCentre();
  server = await startServer({ allow: [new URL(archive.channel.address!).host] });
}, 120_000);
afterAll(async () => {
  await server.close();
  await archive.close();
});
afterEach(() => {
  archive.away = false;
  archive.beforeAnswer = () => Promise.resolve();
});

const centres = () => server.scheme.centres;
const sending = (screen: OrderScreen, n = -1) => screen.studies[0]!.sends.at(n)!;
const notes = (screen: OrderScreen) => screen.studies[0]!.sends.flatMap((send) => send.delivery?.notes ?? []);
const holds = (screen: OrderScreen) => screen.holds.map((hold) => hold.code);
const films = (from: number) => archive.taken.all.slice(from).filter((one) => noteIn(one) === undefined).map((one) => one.sopUid);
const told = (from: number) => archive.taken.all.slice(from).flatMap((one) => noteIn(one) ?? []);

async function sealed(dog: string): Promise<{ on: Road; from: number }> {
  const on = await Road.book(server, { dog, studies: [['elbow', 'threnfold']], inDays: 1 });
  const manager = await server.as(on.house.manager.name);
  await manager.send(`/api/practice/centres/${centres().threnfold.id}/channel`, archive.channel);
  await throughTheVisit(on);
  await on.act('desk', 'seal', on.study().id, {});
  return { on, from: archive.taken.all.length };
}
async function sent(dog: string): Promise<{ on: Road; from: number }> {
  const { on, from } = await sealed(dog);
  await on.act('desk', 'send', on.study().id, {});
  await server.settled();
  await on.look();
  return { on, from };
}
const disownOne = async (on: Road) => {
  await on.look('operator');
  await on.act('operator', 'disownFilm', on.visit.id, { exposure: on.screen.exposures.find((film) => !film.disowned)!.id, reason: 'otherDog' });
};

describe('a study that goes to another centre', () => {
  it('is called back from the archive that has its films, once, and comes there anew under other numbers when it returns', async () => {
    const { on, from } = await sent('Sorrel');
    const first = films(from);
    await on.act('desk', 'changeCentre', on.study().id, { centre: centres().sluiceGreen.id });
    await server.settled();
    expect(told(from)).toEqual([{ code: '113039', words: 'These films are read by another centre, and are not to be read here.', poor: undefined, films: first }]);
    await on.act('desk', 'changeCentre', on.study().id, { centre: centres().threnfold.id });
    expect(on.study().step).toBe('sealed');
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    const again = films(from).slice(first.length);
    expect(again).toHaveLength(first.length);
    expect(again.filter((uid) => first.includes(uid))).toEqual([]);
    expect(sending(await on.look())).toMatchObject({ outcome: 'handedOver', delivery: { state: 'arrived' } });
    expect(told(from)).toHaveLength(1);
    await on.act('desk', 'changeCentre', on.study().id, { centre: centres().sluiceGreen.id });
    await server.settled();
    expect(told(from).slice(1).map((note) => note.films)).toEqual([again]);
  }, 120_000);

  it('does not go to the centre that it goes to already', async () => {
    const { on } = await sealed('Gale');
    const answer = await on.attempt('desk', 'changeCentre', on.study().id, { centre: centres().threnfold.id });
    expect(answer.body).toMatchObject({ code: 'BAD_INPUT', fields: [{ path: 'centre', message: 'This study goes to this centre already. Choose another centre.' }] });
  }, 60_000);

  it('stops what is under way there: the film that had left is called back, and the others stay here', async () => {
    const { on, from } = await sealed('Wenna');
    let go = () => {};
    archive.beforeAnswer = () => new Promise((done) => { go = done; });
    await on.act('desk', 'send', on.study().id, {});
    await archive.taken.until((all) => all.length === from + 1);
    await on.act('desk', 'changeCentre', on.study().id, { centre: centres().sluiceGreen.id });
    archive.beforeAnswer = () => Promise.resolve();
    go();
    await server.settled();
    await server.until(new Date(server.clock.now().getTime() + 10 * 60_000));
    await server.sweep();
    expect(films(from)).toHaveLength(1);
    expect(told(from).map((note) => note.films)).toEqual([films(from)]);
    expect(sending(await on.look()).delivery).toMatchObject({ state: 'ended' });
    expect(on.screen.problems).toEqual([]);
  }, 120_000);

  it('tells the archive once although the worker is killed over it', async () => {
    const { on, from } = await sent('Otter');
    archive.beforeAnswer = () => new Promise(() => undefined);
    const heard = () => archive.taken.until((all) => all.slice(from).some((one) => noteIn(one) !== undefined));
    await server.killingWorker(() => on.act('desk', 'changeCentre', on.study().id, { centre: centres().sluiceGreen.id }).then(() => undefined), heard);
    archive.beforeAnswer = () => Promise.resolve();
    await server.until(new Date(server.clock.now().getTime() + 4 * 60_000));
    await server.sweep();
    expect(told(from)).toHaveLength(1);
    expect(notes(await on.look()).map((note) => note.state)).toEqual(['arrived']);
  }, 120_000);
});

describe('films that another practice sent', () => {
  it('are called back by the practice that the order was handed over to', async () => {
    const { on, from } = await sent('Kestrel');
    const manager = await on.as('manager');
    await manager.send('/api/practice/closing', { lastDay: addDays(on.today, 30) });
    await on.look('manager');
    await on.act('manager', 'handOver', on.id, { to: server.scheme.houses.weirside.id, ownerAgreed: true });
    const theirs = await server.as(server.scheme.houses.weirside.manager.name);
    const { version } = await theirs.read<OrderScreen>(`/api/orders/${on.id}`);
    await theirs.send(`/api/orders/${on.id}/actions/changeCentre`, { key: randomUUID(), version, on: on.study().id, input: { centre: centres().sluiceGreen.id } });
    await server.settled();
    expect(told(from).map((note) => note.films)).toEqual([films(from)]);
  }, 120_000);
});

describe('a film that is to be taken again', () => {
  it('cannot be said to be so while its package is with the centre, which then is told nothing', async () => {
    const { on, from } = await sent('Moss');
    const answer = await on.attempt('operator', 'judgeView', on.study().id, { exposure: on.screen.exposures[0]!.id, verdict: 'retake', reasons: ['Side marker in the picture'] });
    expect(answer.body).toMatchObject({ code: 'NOT_AT_THIS_STEP' });
    await server.settled();
    expect(told(from)).toEqual([]);
  }, 60_000);

  it('is called back from the archive with what was poor about it, once the centre has sent the package back', async () => {
    const { on, from } = await sent('Juniper');
    const [poor] = films(from);
    await on.act('desk', 'rejectFilms', on.study().id, { views: ['mlFlexedRight'], reasons: ['Turned.'] });
    await on.act('vet', 'settleViews', on.study().id, { why: 'No second sleep is wanted.' });
    await on.look('operator');
    const judged = { exposure: on.screen.exposures[0]!.id, verdict: 'retake' as const, reasons: ['Side marker in the picture'] };
    await on.act('operator', 'judgeView', on.study().id, judged);
    await server.settled();
    expect(told(from)).toEqual([{ code: '113001', words: 'This film is to be taken again. Side marker in the picture', poor: '111220', films: [poor] }]);
    await on.act('operator', 'judgeView', on.study().id, { ...judged, verdict: 'undecided', reasons: [] });
    await on.act('operator', 'judgeView', on.study().id, judged);
    await server.settled();
    expect(told(from)).toHaveLength(1);
  }, 120_000);
});

describe('a note that does not come through', () => {
  it('because the archive refuses it becomes a task: the centre is told in another way, by name, and nothing is tried again', async () => {
    const { on, from } = await sent('Pebble');
    archive.refuse(1);
    await disownOne(on);
    await server.settled();
    expect(holds(await on.look())).toContain('NOTE_NOT_TAKEN');
    expect(on.screen.problems).toEqual([]);
    expect(notes(on.screen)).toMatchObject([{ state: 'refused', says: expect.stringMatching(/it takes no images of this kind/), told: null }]);
    const [note] = on.screen.choices.notes!;
    expect(note).toMatchObject({ id: notes(on.screen)[0]!.id, name: 'This film is of another dog.' });
    expect((await on.attempt('desk', 'tellOfNote', on.study().id, { note: note!.id, how: 'phone', whom: '' })).body).toMatchObject({ code: 'BAD_INPUT' });
    await on.act('desk', 'tellOfNote', on.study().id, { note: note!.id, how: 'phone', whom: 'The reading room' });
    expect(holds(on.screen)).not.toContain('NOTE_NOT_TAKEN');
    expect(notes(on.screen)[0]!.told).toMatchObject({ by: on.house.desk.name, how: 'phone', whom: 'The reading room' });
    expect(on.screen.choices.notes).toEqual([]);
    await server.until(new Date(server.clock.now().getTime() + 10 * 60_000));
    await server.sweep();
    expect(told(from)).toEqual([]);
  }, 120_000);

  it('because the archive is away is tried again, and once a person has told the centre it is tried no more', async () => {
    const { on, from } = await sent('Fennec');
    archive.away = true;
    await disownOne(on);
    await server.settled();
    await on.look();
    const deliver = (lastAttempt: boolean) => deliverPackage(server.workerDeps, notes(on.screen)[0]!.id, { signal: new AbortController().signal, lastAttempt });
    expect(holds(on.screen)).not.toContain('NOTE_NOT_TAKEN');
    await expect(deliver(true)).rejects.toThrow(/did not answer/);
    expect(holds(await on.look())).toContain('NOTE_NOT_TAKEN');
    await on.act('desk', 'tellOfNote', on.study().id, { note: notes(on.screen)[0]!.id, how: 'mail', whom: 'The reading room' });
    archive.away = false;
    await deliver(false);
    await server.until(new Date(server.clock.now().getTime() + 10 * 60_000));
    await server.sweep();
    expect(told(from)).toEqual([]);
    expect(holds(await on.look())).not.toContain('NOTE_NOT_TAKEN');
  }, 120_000);

  it('and comes through after all is nobody’s task any more', async () => {
    const { on, from } = await sent('Hazel');
    archive.away = true;
    await disownOne(on);
    await server.settled();
    await on.look();
    const deliver = (lastAttempt: boolean) => deliverPackage(server.workerDeps, notes(on.screen)[0]!.id, { signal: new AbortController().signal, lastAttempt });
    await expect(deliver(true)).rejects.toThrow(/did not answer/);
    archive.away = false;
    await deliver(false);
    expect(told(from)).toHaveLength(1);
    expect(holds(await on.look())).not.toContain('NOTE_NOT_TAKEN');
  }, 120_000);
});

it('nothing broke inside the server', () => expect(server.errors).toEqual([]));
