import type { Page } from 'playwright-core';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { findings } from '#test/browser/support/findings';
import { choose, see } from '#test/browser/support/moves';
import { Stage } from '#test/browser/support/stage';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { aRadiograph } from './support/a-film.js';
import { ConsoleRoom } from './support/console.js';
import { Modality } from './support/modality.js';

describeWithPeer('storescu', 'from a machine', () => describeWithPeer('chromium', 'an image that fits no order, in a browser', (chromium) => {
  let stage: Stage;
  let room: ConsoleRoom;
  let road: Road;
  let desk: Page;
  beforeAll(async () => {
    stage = await Stage.open(chromium);
    road = await Road.book(stage.server, { dog: 'Gale', studies: [['hipLaxity', 'threnfold']], inDays: 0 });
    room = await ConsoleRoom.open(stage.server, road.house.id);
    await room.store([writeRadiograph(aRadiograph({ accession: '', studyUid: newUid() }))]);
    await stage.server.settled();
    desk = await stage.person('Marit Oskar');
  }, 120_000);
  afterAll(async () => {
    await room.close();
    await stage.close();
  });

  it('is told on the day board, shown in the tray, and put where it belongs', async () => {
    await desk.goto('/');
    await desk.getByRole('link', { name: '1 image without an order' }).click();
    await see(desk, 'It carries no number of an order.');
    expect(await findings(desk)).toEqual([]);
    await desk.getByRole('button', { name: 'Say whose it is' }).click();
    await choose(desk, 'Choose Order', `Gale, ${road.screen.accession}, ${road.today}`);
    await desk.getByRole('button', { name: 'Put it into this order' }).click();
    await see(desk, 'No image waits');
  });

  it('shows on the open day board and in the open tray of its practice as it comes, and in no other practice', async () => {
    const [tray, elsewhere] = await Promise.all([stage.person('Marit Oskar'), stage.person('Pell Vantry')]);
    await Promise.all([desk.goto('/'), tray.goto('/unmatched'), elsewhere.goto('/')]);
    await Promise.all([see(tray, 'No image waits'), desk.getByRole('heading', { level: 1 }).waitFor(), elsewhere.getByRole('heading', { level: 1 }).waitFor()]);
    await room.store([writeRadiograph(aRadiograph({ accession: '', studyUid: newUid() }))]);
    const came = performance.now();
    await Promise.all([desk.getByRole('link', { name: '1 image without an order' }).waitFor(), see(tray, 'It carries no number of an order.')]);
    // Pages ask by themselves after half a minute at the earliest.
    expect(performance.now() - came).toBeLessThan(15_000);
    await tray.getByRole('img', { name: /^The image from/ }).waitFor();
    expect(await elsewhere.getByText('without an order').count()).toBe(0);
  });

  it('stands at the order that it was put into', async () => {
    await desk.goto(`/orders/${road.id}`);
    await see(desk, 'From the X-ray machine, not named yet');
    await see(desk, 'It names another dog');
    expect(await findings(desk)).toEqual([]);
  });

  it('stands at its order beside what the machine says it did', async () => {
    const machine = new Modality(room);
    const step = newUid();
    await machine.begin(step, { PatientID: 'D-999999', PerformedProcedureStepStartDate: '20261129', PerformedProcedureStepStartTime: '101112', ScheduledStepAttributesSequence: [{ AccessionNumber: road.screen.accession }] });
    await see(desk, 'X-ray room, DXROOM1: at work');
    await machine.goOn(step, { PerformedProcedureStepStatus: 'COMPLETED', TotalNumberOfExposures: 2, ImageAndFluoroscopyAreaDoseProduct: 0.42, ExposureDoseSequence: [{ KVP: 66, Exposure: 5 }] });
    await see(desk, 'It counts 2 exposures, and 0 images of it came.');
    await see(desk, '66\u00a0kV, 5\u00a0mAs');
    expect(await findings(desk)).toEqual([]);
    await machine.ask(newUid(), [newUid()]);
    await machine.reports.until((all) => all.length > 0);
    await machine.close();
  });

  it('lies above what a machine says of work without an order, which a person sets aside', async () => {
    const machine = new Modality(room);
    const work = desk.getByRole('region', { name: 'Work of the machines without an order' });
    await desk.goto('/unmatched');
    await desk.getByRole('heading', { level: 1 }).waitFor();
    await machine.begin(newUid(), { PatientID: 'D-999999', PerformedProcedureStepDescription: 'Tube warm-up', PerformedProcedureStepStartDate: '20261129', PerformedProcedureStepStartTime: '070500', ScheduledStepAttributesSequence: [] });
    await see(desk, 'Work of the machines without an order');
    await see(desk, 'Protocol: Tube warm-up');
    expect(await findings(desk)).toEqual([]);
    await work.getByRole('button', { name: 'It belongs to no order' }).click();
    await work.getByRole('button', { name: 'Set it aside' }).click();
    await see(desk, 'This is needed.');
    expect(await findings(desk)).toEqual([]);
    await work.getByLabel('Why').fill('The tube was warmed up.');
    await work.getByRole('button', { name: 'Set it aside' }).click();
    await work.waitFor({ state: 'detached' });
    await machine.close();
  });

  it('comes from a machine that the practice page lists', async () => {
    await desk.goto('/practice');
    await see(desk, 'X-ray machines on the network');
    await see(desk, room.called);
    await see(desk, '1 of 1 not safe here. The machine must keep it.');
    expect(await findings(desk)).toEqual([]);
  });
}));
