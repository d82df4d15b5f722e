import { writeRadiograph } from '#libs/dicom/write-radiograph';
import type { DeliveryAnswer } from '#libs/contracts/results-in';
import { lead } from '#seed/practices';
import { describeWithPeer } from '#test/support/peers';
import { CentreComputer, packageOf } from '#test/support/results-in';
import { readPdf } from '#test/support/read-pdf';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { accept } from '#test/support/study-legs';
import { admit, goHome, judge, ownerSigns, sedate, watch } from '#test/support/visit-legs';
import { Archive } from './support/archive.js';
import { ConsoleRoom } from './support/console.js';
import { picked, viewsOf } from './support/picked.js';

const KEYS = ['PatientName', 'PatientID', 'AccessionNumber', 'StudyInstanceUID'];

describeWithPeer('Orthanc', 'an order between a machine and a centre that speak for themselves', (orthanc) => describeWithPeer('storescu', 'on the network', () => {
  let archive: Archive;
  let server: RunningServer;
  let room: ConsoleRoom;
  let road: Road;
  beforeAll(async () => {
    archive = await Archive.open(orthanc);
    server = await startServer({ allow: [archive.host] });
    road = await Road.book(server, { dog: 'Heron', studies: [['hipLaxity', 'threnfold']] });
    room = await ConsoleRoom.open(server, road.house.id);
    await (await road.as('manager')).send(`/api/practice/centres/${server.scheme.centres.threnfold.id}/channel`, archive.channel);
  }, 120_000);
  afterAll(async () => {
    await room.close();
    await server.close();
    await archive.close();
  });

  it('has its films by the console’s own list, a retake among them', async () => {
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    const [answer] = await room.worklist([...KEYS, '(0040,0100)[0].Modality=DX']);
    const views = viewsOf(answer!);
    for (const view of [...views, views[2]!]) {
      await watch(road);
      expect((await room.store([writeRadiograph(picked(answer!, road.today, view))])).code).toBe(0);
      await road.look('operator');
      const film = road.screen.exposures.at(-1)!;
      if (film.view === views[2]!.code && film.attempt === 1) await judge(road, film.id, 'retake', [road.screen.choices.reasons![0]!.id]);
      else await judge(road, film.id, 'accept');
      await road.act('operator', 'logRoom', road.visit.id, { exposure: film.id, people: [road.slot.operator.id, road.slot.nurse.id] });
    }
    await road.act('operator', 'endImaging', road.visit.id, {});
    await goHome(road);
    expect(road.screen.exposures.map((e) => e.attempt)).toEqual([1, 1, 1, 2]);
  });

  it('has them in the centre’s archive once the desk has pressed send, and nothing there says whose dog it is', async () => {
    await road.act('desk', 'seal', road.study().id, {});
    await road.act('desk', 'send', road.study().id, {});
    await server.settled();
    await road.look('desk');
    expect(road.study().sends.at(-1)).toMatchObject({ outcome: 'handedOver', delivery: { state: 'arrived', films: [{ state: 'arrived' }, { state: 'arrived' }, { state: 'arrived' }, { state: 'arrived' }] } });
    const there = await archive.images('00100010', '00102297', '00080050');
    expect(there).toHaveLength(4);
    const told = JSON.stringify(there);
    for (const word of [road.dog.person.name, road.dog.call, road.screen.accession]) expect(told).not.toContain(word);
  });

  it('has its reading by the centre’s own message, and ends in a letter with nobody typing a number', async () => {
    const computer = await CentreComputer.of(server, await server.as(lead.name), server.scheme.centres.threnfold.id);
    // Invented values.
    const reading = { package: await packageOf(road, 'hipLaxity'), number: 'R-77', readBy: 'Noemi Haskel', joints: { left: { value: 0.38 }, right: { value: 0.44 } } };
    const answer = await computer.send({ format: 'cotyla-results-1', readings: [reading] });
    expect([answer.status, (answer.body as DeliveryAnswer).readings[0]!.outcome]).toEqual([200, 'taken']);
    await road.look('vet');
    await accept(road, road.study().id);
    await road.act('vet', 'releaseLetter', road.study().id, {});
    const mail = await server.mail.wait(road.email, /a letter/);
    const { text } = await readPdf(mail.attachments[0]!.content);
    expect(text).toContain('0.38');
    expect(text).toContain('0.44');
    expect(server.errors).toEqual([]);
  });
}));
