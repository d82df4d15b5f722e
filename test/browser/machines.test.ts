import type { DataSet } from 'dicom-parser';
import type { Page } from 'playwright-core';
import { channelNames } from '#libs/contracts/dispatch';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { currentProtocols } from '#libs/science/protocols/catalogue';
import { lead } from '#seed/practices';
import { Archive } from '#test/peers/support/archive';
import { ConsoleRoom } from '#test/peers/support/console';
import { picked, viewsOf } from '#test/peers/support/picked';
import { describeWithPeer } from '#test/support/peers';
import { readPdf } from '#test/support/read-pdf';
import { CentreComputer, packageOf } from '#test/support/results-in';
import { Road } from '#test/support/road';
import { admit, goHome, ownerSigns, sedate, watch } from '#test/support/visit-legs';
import { findings } from './support/findings.js';
import { actAtOnce, choose, see } from './support/moves.js';
import { Stage } from './support/stage.js';

const ROOM = 'Room 1';
const TITLE = 'DXROOM1';
const CENTRE = 'Reading centre, Threnfold';
const KEYS = ['PatientName', 'PatientID', 'AccessionNumber', 'StudyInstanceUID', '(0040,0100)[0].Modality=DX'];
/** Large enough to be looked at. */
const PIXELS = 240;
const shortLabels = new Map(currentProtocols().flatMap((p) => p.views.map((v) => [v.code as string, v.shortLabel])));

// dcmtk plays the machine in the room, an archive of other people the centre; all else is pressed by those whose work it is.
describeWithPeer('chromium', 'an order between two machines, as people see it', (chromium) => describeWithPeer('Orthanc', 'with an archive', (orthanc) => describeWithPeer('storescu', 'on the network', () => {
  let archive: Archive;
  let stage: Stage;
  let room: ConsoleRoom;
  let road: Road;
  let dog: DataSet;
  let operator: Page;
  let desk: Page;
  const send = (view: { code: string; label: string }, n: number) => {
    const values = Uint16Array.from({ length: PIXELS * PIXELS }, (_, i) => (i % PIXELS) * 16 + n);
    return room.store([writeRadiograph(picked(dog, road.today, view, { pixels: { rows: PIXELS, columns: PIXELS, bits: 12, values } }))]);
  };

  beforeAll(async () => {
    archive = await Archive.open(orthanc);
    stage = await Stage.open(chromium, { allow: [archive.host] });
    road = await Road.book(stage.server, { dog: 'Heron', studies: [['hipLaxity', 'threnfold']] });
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
  }, 120_000);
  afterAll(async () => {
    await room?.close();
    await stage.close();
    await archive.close();
  });

  it('the practice enters its machine, and by which way films go to the centre', async () => {
    const manager = await stage.person(road.name('manager'));
    await manager.getByRole('link', { name: 'Practice' }).click();
    await manager.getByRole('button', { name: 'Add a machine' }).click();
    await manager.getByLabel('Room or machine').fill(ROOM);
    await manager.getByLabel('What it calls itself (AE title)').fill(TITLE);
    await manager.getByLabel('Its IP address').fill('127.0.0.1');
    await manager.getByRole('button', { name: 'Add this', exact: true }).click();
    await manager.getByRole('row', { name: new RegExp(`${ROOM}.*${TITLE}`) }).waitFor();
    room = await ConsoleRoom.open(stage.server, road.house.id, { calling: TITLE });
    await see(manager, room.called);

    const centre = manager.locator('.centre').filter({ hasText: CENTRE });
    await centre.getByRole('button', { name: 'Change how films go there' }).click();
    await choose(manager, 'Films go by', channelNames.dicomweb);
    await manager.getByLabel('Address of the DICOMweb service').fill(archive.channel.address);
    await manager.getByLabel('Name to sign in with').fill(archive.channel.account);
    await manager.getByLabel('Password or token').fill(archive.channel.secret);
    await manager.getByRole('button', { name: 'Send this way from now on' }).click();
    await centre.getByText(archive.channel.address).waitFor();
    expect(await findings(manager)).toEqual([]);
  }, 90_000);

  it('each film that the machine sends stands on the image screen by itself, under its view, and is judged with one key', async () => {
    [dog] = (await room.worklist(KEYS)) as [DataSet];
    const [first, second, third] = viewsOf(dog);
    operator = await stage.person(road.slot.operator.name);
    await operator.getByRole('row', { name: /Heron/ }).getByRole('link', { name: 'Imaging screen' }).click();
    await see(operator, 'There is no picture yet.');
    let n = 0;
    for (const [view, attempt] of [[first!, 1], [second!, 1], [third!, 1], [third!, 2]] as const) {
      await watch(road);
      expect((await send(view, n++)).code).toBe(0);
      await operator.locator('.film-box[data-shown=film]').and(operator.getByRole('group', { name: new RegExp(`^${shortLabels.get(view.code)}, attempt ${attempt}`) })).waitFor();
      const retake = view === third && attempt === 1;
      if (retake) {
        await operator.keyboard.press('r');
        await operator.keyboard.press('1');
      }
      await operator.keyboard.press(retake ? 'r' : 'a');
      await see(operator, retake ? 'To be taken again.' : 'Accepted.');
      await road.look('operator');
    }
    expect(road.screen.exposures.map((e) => [e.attempt, e.verdicts[0]?.verdict])).toEqual([[1, 'accept'], [1, 'accept'], [1, 'retake'], [2, 'accept']]);
    expect(await findings(operator)).toEqual([]);
    for (const { id } of road.screen.exposures) await road.act('operator', 'logRoom', road.visit.id, { exposure: id, people: [road.slot.operator.id, road.slot.nurse.id] });
    await road.act('operator', 'endImaging', road.visit.id, {});
    await goHome(road);
  }, 120_000);

  it('the desk presses send, sees each film arrive, and the archive has them', async () => {
    desk = await stage.person(road.name('desk'));
    await desk.goto(`/orders/${road.id}`);
    await actAtOnce(desk, 'Seal package');
    await actAtOnce(desk, 'Send');
    await see(desk, /4 of 4 images\./);
    expect(await archive.images()).toHaveLength(4);
    expect(await findings(desk)).toEqual([]);
  }, 90_000);

  it('the reading comes by the centre’s own message and stands before the vet without a reload; the letter goes out, and nobody has typed a number', async () => {
    const vet = await stage.person(road.slot.vet.name);
    await vet.goto(`/orders/${road.id}`);
    const computer = await CentreComputer.of(stage.server, await stage.server.as(lead.name), stage.server.scheme.centres.threnfold.id);
    await road.look();
    // Invented values.
    const reading = { package: await packageOf(road, 'hipLaxity'), number: 'R-77', readBy: 'Noemi Haskel', joints: { left: { value: 0.38 }, right: { value: 0.44 } } };
    expect((await computer.send({ format: 'cotyla-results-1', readings: [reading] })).status).toBe(200);
    await actAtOnce(vet, 'Accept result');
    await actAtOnce(vet, 'Release letter');
    const { attachments } = await stage.server.mail.wait(road.email, /a letter/);
    const { text } = await readPdf(attachments[0]!.content);
    for (const value of ['0.38', '0.44']) expect(text).toContain(value);
    await see(vet, /0\.38/);
    expect(await findings(vet)).toEqual([]);
  }, 90_000);

  it('no page complained, and nothing broke inside', () => {
    expect(stage.complaints).toEqual([]);
    expect(stage.server.errors).toEqual([]);
  });
})));
