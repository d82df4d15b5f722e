import type { OrderScreen } from '#libs/contracts/screens/order';
import { checkDicom } from '#libs/dicom/check-dicom';
import { greyOf } from '#libs/dicom/render-grey';
import { EXPLICIT } from '#libs/dicom/syntaxes';
import { sopClasses } from '#libs/dicom/uids';
import { inExtendedJpeg, inRle } from '#test/support/film';
import { readDataSet } from '#libs/dicom/read-data-set';
import { deliverPackage } from '#libs/steps/dispatch/deliver';
import { Road } from '#test/support/road';
import { randomMoment, takenOver } from '#test/support/after-a-kill';
import { startServer, type RunningServer } from '#test/support/running-server';
import { dispatch } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { admit, goHome, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';
import type { Centre } from './channels-support/centre.js';
import { dicomwebCentre } from './channels-support/dicomweb-centre.js';
import { objectStoreCentre } from './channels-support/object-store-centre.js';

const FILMS = 3;

const booked = (server: RunningServer, dog: string) => Road.book(server, { dog, studies: [['hipLaxity', 'threnfold']], inDays: 1 });

/** The dog is at home again, and its films, of all kinds there are, are sealed. */
async function packed(on: Road): Promise<Road> {
  await toTheTable(on);
  for (const [view, kind] of [['vdExtended', 'dicom'], ['vdCompression', 'png'], ['vdDistraction', 'jpeg']] as const) await judge(on, await takeView(on, view, kind), 'accept');
  await toBed(on);
  return on;
}

async function toTheTable(on: Road): Promise<void> {
  await ownerSigns(on);
  await on.untilVisit();
  await admit(on);
  await sedate(on);
}

async function toBed(on: Road): Promise<void> {
  await on.act('operator', 'endImaging', on.visit.id, {});
  await goHome(on);
}

const seal = (on: Road) => on.act('desk', 'seal', on.study().id, {});
const sending = (screen: OrderScreen) => screen.studies[0]!.sends.at(-1)!;
/** The same order to a colleague who reads German: what a job wrote down is said anew. */
async function toGerman(on: Road): Promise<OrderScreen> {
  const nurse = await on.as('nurse');
  await nurse.send('/api/me/language', { language: 'de' });
  const screen = await nurse.read<OrderScreen>(`/api/orders/${on.id}`);
  await nurse.send('/api/me/language', { language: 'en' });
  return screen;
}
const states = (screen: OrderScreen) => sending(screen).delivery!.films.map((film) => film.state);

describe.each([['DICOMweb', dicomwebCentre], ['an object store', objectStoreCentre]])('films that go by %s', (_, open) => {
  let server: RunningServer;
  let centre: Centre;
  beforeAll(async () => {
    centre = await open();
    server = await startServer({ allow: [new URL(centre.channel.address!).host] });
    const manager = await server.as((await road('Sedge')).house.manager.name);
    await manager.send(`/api/practice/centres/${server.scheme.centres.threnfold.id}/channel`, centre.channel);
  }, 120_000);
  afterAll(async () => {
    await server.close();
    await centre.close();
  });

  const roads = new Map<string, Road>();
  /** A dog of which there is an order. */
  async function road(dog: string): Promise<Road> {
    if (!roads.has(dog)) roads.set(dog, await booked(server, dog));
    return roads.get(dog)!;
  }
  const imaged = async (dog: string) => {
    const on = await packed(await road(dog));
    await seal(on);
    return on;
  };
  const holds = (screen: OrderScreen) => screen.holds.map((hold) => hold.code);
  const deliver = (on: Road, lastAttempt: boolean) => deliverPackage(server.workerDeps, sending(on.screen).id, { signal: new AbortController().signal, lastAttempt });
  /** How often each film was taken. */
  const times = (from = 0) => {
    const numbers = centre.taken.all.slice(from).map((film) => film.sopUid);
    return [...new Set(numbers)].map((one) => numbers.filter((number) => number === one).length);
  };

  it('are tried again when the centre is away, a person is told at last, and all arrive once it is back', async () => {
    const on = await imaged('Sedge');
    centre.away = true;
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    expect(states(await on.look())).toEqual(['waiting', 'waiting', 'waiting']);
    expect(sending(on.screen)).toMatchObject({ outcome: 'onItsWay', delivery: { state: 'open' } });
    await expect(deliver(on, true)).rejects.toThrow(/did not answer/);
    expect(holds(await on.look())).toContain('SEND_UNCERTAIN');
    centre.away = false;
    await deliver(on, false);
    expect(states(await on.look())).toEqual(['arrived', 'arrived', 'arrived']);
    expect(sending(on.screen)).toMatchObject({ outcome: 'handedOver', delivery: { state: 'arrived' } });
    expect(holds(on.screen)).not.toContain('SEND_UNCERTAIN');
    expect(times()).toEqual([1, 1, 1]);
  }, 120_000);

  it('are DICOM, whatever they were, and tell the dog and nobody else', () => {
    for (const { content } of centre.taken.all) {
      const data = readDataSet(content);
      expect(data.string('x00102201')).toBe('Canine');
      expect(data.string('x00080050')).toMatch(/^P-[0-9A-F]{8}$/);
      expect(content.toString('latin1')).not.toMatch(/Ownername|Calledname|OURNUMBER/);
    }
  });

  it('arrive once each although the worker is killed after each of them', async () => {
    const on = await imaged('Hazel');
    const before = centre.taken.all.length;
    centre.beforeAnswer = () => new Promise(() => undefined);
    const came = (n: number) => () => centre.taken.until((all) => all.length >= before + n);
    await server.killingWorker(() => on.act('desk', 'send', on.study().id, {}).then(() => undefined), came(1), came(2), came(3));
    centre.beforeAnswer = () => Promise.resolve();
    await server.until(new Date(server.clock.now().getTime() + 4 * 60_000));
    await server.sweep();
    expect(states(await on.look())).toEqual(['arrived', 'arrived', 'arrived']);
    expect(sending(on.screen).outcome).toBe('handedOver');
    expect(times(before)).toEqual([1, 1, 1]);
  }, 120_000);

  it('are withdrawn from an archive by a note of the standard, once, when a film turns out to be of another dog', async () => {
    const on = await road('Hazel');
    const before = centre.taken.all.length;
    await on.look('operator');
    await on.act('operator', 'disownFilm', on.visit.id, { exposure: on.screen.exposures[0]!.id, reason: 'otherDog' });
    await server.settled();
    const notes = centre.taken.all.slice(before).map(({ content }) => readDataSet(content));
    if (centre.channel.kind !== 'dicomweb') return expect(notes).toEqual([]);
    expect(notes.map((note) => [note.string('x00080060'), note.elements.x0040a043!.items![0]!.dataSet!.string('x00080100')])).toEqual([['KO', '113038']]);
    const film = readDataSet(centre.taken.all[before - FILMS]!.content);
    const study = notes[0]!.elements.x0040a375!.items![0]!.dataSet!;
    expect(study.string('x0020000d')).toBe(film.string('x0020000d'));
    expect(study.elements.x00081115!.items![0]!.dataSet!.elements.x00081199!.items![0]!.dataSet!.string('x00081155')).toBe(film.string('x00080018'));
    expect(sending(await on.look()).delivery!.notes).toMatchObject([{ words: 'This film is of another dog.', films: 1, state: 'arrived' }]);
  });

  it('that the centre refuses are named with the reason; the others arrive, and sent again only what is missing goes', async () => {
    const on = await imaged('Gale');
    const before = centre.taken.all.length;
    centre.refuse(2);
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    expect(states(await on.look())).toEqual(['arrived', 'refused', 'arrived']);
    const { delivery } = sending(on.screen);
    expect(delivery!.films[1]).toMatchObject({ name: 'Compression, from below, attempt 1', words: expect.stringMatching(/refuses it: (it takes no images of this kind|Your proposed upload exceeds)/) });
    expect(delivery!.state).toBe('refused');
    const german = await toGerman(on);
    expect(sending(german).delivery!.films[1]).toMatchObject({ name: 'Zusammengedrückt, von unten, Versuch 1', words: expect.stringMatching(/lehnt es ab: (es nimmt keine Bilder dieser Art|Your proposed upload exceeds)/) });
    expect(german.happened.map((h) => h.what)).toContainEqual(expect.stringMatching(/ging nicht\. Zusammengedrückt, von unten, Versuch 1: .*lehnt es ab/));
    expect(holds(on.screen)).toContain('SEND_UNCERTAIN');
    await on.act('desk', 'resolveSend', on.study().id, { send: sending(on.screen).id, arrived: false });
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    expect(states(await on.look())).toEqual(['arrived', 'arrived', 'arrived']);
    expect(sending(on.screen).outcome).toBe('handedOver');
    expect(times(before)).toEqual([1, 1, 1]);
  }, 120_000);

  it('stop at once when the centre does not know us, and go on when the right password was entered', async () => {
    const on = await imaged('Heron');
    const manager = await server.as(on.house.manager.name);
    const path = `/api/practice/centres/${server.scheme.centres.threnfold.id}/channel`;
    await manager.send(path, { ...centre.channel, secret: 'another word' });
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    expect(sending(await on.look()).delivery).toMatchObject({ state: 'stopped', words: expect.stringMatching(/practice manager/) });
    expect(on.screen.problems.map((p) => p.job)).toEqual(['deliver-package']);
    const german = await toGerman(on);
    expect([sending(german).delivery!.words, german.problems[0]!.words]).toEqual([expect.stringMatching(/Die Praxisleitung/), expect.stringMatching(/^Die Bilder konnten nicht zur Stelle gebracht werden\. \(.*Die Praxisleitung/)]);
    await manager.send(path, centre.channel);
    const desk = await on.as('desk');
    await desk.send(`/api/orders/${on.id}/problems/${on.screen.problems[0]!.id}/retry`);
    await server.settled();
    expect(states(await on.look())).toEqual(Array(FILMS).fill('arrived'));
    expect(on.screen.problems).toEqual([]);
  }, 120_000);

  it('leave no secret where a person or another practice could read it', async () => {
    const manager = await server.as((await road('Sedge')).house.manager.name);
    const { text } = await manager.get('/api/practice/channels').expect(200);
    expect(text).toContain(centre.channel.address!);
    expect(text.replaceAll(`"account":"${centre.channel.account!}"`, '')).not.toContain(centre.channel.secret!);
    const other = Object.values(server.scheme.houses).find((house) => house.manager.name !== roads.get('Sedge')!.house.manager.name)!;
    expect((await (await server.as(other.manager.name)).get('/api/practice/channels').expect(200)).body).toEqual({ rows: [] });
  });
});

describe('films that go as a DICOM medium', () => {
  let server: RunningServer;
  let road: Road;
  beforeAll(async () => {
    server = await startServer();
    road = await booked(server, 'Sedge');
    const manager = await server.as(road.house.manager.name);
    await manager.send(`/api/practice/centres/${server.scheme.centres.threnfold.id}/channel`, { kind: 'media' });
  }, 60_000);
  afterAll(() => server.close());

  it('lie behind the link of a mail with their directory, and tell the dog and nobody else', async () => {
    await packed(road);
    const reader = await dispatch(road, road.study().id);
    const files = await unzip(await reader.session.bytes(`${reader.path}/zip`));
    expect([...files.keys()].sort()).toEqual(['DICOM/I0000001', 'DICOM/I0000002', 'DICOM/I0000003', 'DICOMDIR', 'manifest.json']);
    const directory = readDataSet(files.get('DICOMDIR')!);
    expect(directory.elements.x00041220!.items!.flatMap((record) => record.dataSet!.string('x00041500') ?? [])).toEqual(['DICOM\\I0000001', 'DICOM\\I0000002', 'DICOM\\I0000003']);
    for (const content of files.values()) expect(content.toString('latin1')).not.toMatch(/Ownername|Calledname|OURNUMBER/);
    await server.settled();
    expect(states(await road.look())).toEqual(['arrived', 'arrived', 'arrived']);
    expect(sending(road.screen).outcome).toBe('handedOver');
  }, 60_000);

  it('are packed and mailed once although workers are killed over it', async () => {
    const on = await packed(await booked(server, 'Hazel'));
    await seal(on);
    await server.killingWorker(() => on.act('desk', 'send', on.study().id, {}).then(() => undefined), randomMoment('a medium'), randomMoment('a medium'));
    await takenOver(on);
    expect(states(await on.look())).toEqual(['arrived', 'arrived', 'arrived']);
    expect(server.mail.to('films@threnfold.example')).toHaveLength(2); // one for each of the two dogs
  }, 120_000);

  it('are plain numbers there, with or without a packed one among them, and Digital X-Ray where a size was said', async () => {
    const on = await booked(server, 'Gale');
    await toTheTable(on);
    const detector = on.screen.choices.detectors![0]!.id;
    for (const [view, kind, more] of [
      ['vdExtended', 'dicom', { as: inRle }], ['vdCompression', 'png', { size: { detector, right: 'left', lower: 'tail' } }], ['vdDistraction', 'jpeg', {}],
    ] as const) await judge(on, await takeView(on, view, kind, more), 'accept');
    await toBed(on);
    const packedFilm = await (await on.as('operator')).bytes(`/api/orders/${on.id}/images/${on.screen.exposures[0]!.image}/file`);
    const reader = await dispatch(on, on.study().id);
    const files = await unzip(await reader.session.bytes(`${reader.path}/zip`));
    const films = [1, 2, 3].map((n) => files.get(`DICOM/I000000${n}`)!);
    expect(films.map((film) => checkDicom(film)).map(({ transferSyntax, sopClassUid, spacing }) => [transferSyntax, sopClassUid, spacing?.millimetres])).toEqual([
      [EXPLICIT, sopClasses.dxForPresentation, [0.14, 0.14]], [EXPLICIT, sopClasses.dxForPresentation, [0.14, 0.14]], [EXPLICIT, sopClasses.secondaryCapture, undefined],
    ]);
    expect(checkDicom(packedFilm).compressed).toBe(true);
    const [sent, was] = await Promise.all([greyOf(films[0]!), greyOf(packedFilm)]);
    expect(Buffer.from(sent.values.buffer).equals(Buffer.from(was.values.buffer))).toBe(true);
  }, 60_000);

  it('of which one cannot be unpacked do not go without it: a person is told which, and what to do', async () => {
    const on = await booked(server, 'Heron');
    await toTheTable(on);
    for (const [view, more] of [['vdExtended', {}], ['vdCompression', { as: inExtendedJpeg }], ['vdDistraction', {}]] as const) await judge(on, await takeView(on, view, 'dicom', more), 'accept');
    await toBed(on);
    await seal(on);
    const mails = server.mail.to('films@threnfold.example').length;
    await on.act('desk', 'send', on.study().id, {});
    await server.settled();
    expect(states(await on.look())).toEqual(['arrived', 'refused', 'arrived']);
    expect(sending(on.screen).delivery).toMatchObject({ state: 'refused', films: [{}, { name: 'Compression, from below, attempt 1', words: expect.stringMatching(/cannot be unpacked here.*Send the package by another way/) }, {}] });
    expect(on.screen.holds.map((hold) => hold.code)).toContain('SEND_UNCERTAIN');
    expect(server.mail.to('films@threnfold.example')).toHaveLength(mails);
  }, 60_000);
});
