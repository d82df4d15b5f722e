import type { DataSet } from 'dicom-parser';
import type { Unmatched } from '#libs/contracts/gateway';
import { newUid } from '#libs/dicom/uids';
import { writeRadiograph } from '#libs/dicom/write-radiograph';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { aRadiograph } from './support/a-film.js';
import { ConsoleRoom } from './support/console.js';
import { Modality, type Elements } from './support/modality.js';

let server: RunningServer;
let room: ConsoleRoom;
let machine: Modality;
let road: Road;
let entry: DataSet;

const step = newUid();
const image = newUid();
const heard = async () => (await road.look('operator')).performed;
const rows = (sopUid: string) => server.look((tx) => tx.performedStep.findMany({ where: { sopUid }, orderBy: { place: 'asc' } }));

/** As the machine has it from its worklist. */
const scheduled = (more: Elements = {}): Elements => ({
  PatientID: entry.string('x00100020'), PerformedProcedureStepID: 'P1', PerformedStationAETitle: 'DXROOM1', Modality: 'DX', PerformedProcedureStepDescription: 'Hips, three views',
  PerformedProcedureStepStartDate: '20261129', PerformedProcedureStepStartTime: '101112',
  ScheduledStepAttributesSequence: [{ StudyInstanceUID: entry.string('x0020000d'), AccessionNumber: entry.string('x00080050'), ScheduledProcedureStepID: entry.elements.x00400100!.items![0]!.dataSet!.string('x00400009') }],
  PerformedSeriesSequence: [], ...more,
});
const END: Elements = {
  PerformedProcedureStepStatus: 'COMPLETED', PerformedProcedureStepEndDate: '20261129', PerformedProcedureStepEndTime: '102000', TotalNumberOfExposures: 2, ImageAndFluoroscopyAreaDoseProduct: 0.42,
  ExposureDoseSequence: [{ KVP: 66, XRayTubeCurrentInuA: 200_000, ExposureTime: 25 }, { KVP: 66, XRayTubeCurrentInuA: 200_000, ExposureTime: 30 }],
  PerformedSeriesSequence: [{ ProtocolName: 'Hips', SeriesInstanceUID: newUid(), ReferencedImageSequence: [{ ReferencedSOPClassUID: '1.2.840.10008.5.1.4.1.1.1.1', ReferencedSOPInstanceUID: image }] }],
};

describeWithPeer('storescu', 'an X-ray machine that says what it does', () => {
  beforeAll(async () => {
    server = await startServer();
    road = await Road.book(server, { dog: 'Heron', studies: [['hipLaxity', 'threnfold']], inDays: 0 });
    room = await ConsoleRoom.open(server, road.house.id);
    machine = new Modality(room);
    entry = (await room.worklist(['PatientID', 'AccessionNumber', 'StudyInstanceUID', '(0040,0100)[0].Modality=DX', '(0040,0100)[0].ScheduledProcedureStepID']))[0]!;
  });
  afterAll(async () => {
    await machine.close();
    await room.close();
    await server.close();
  });

  it('is shown at its order from the moment it begins', async () => {
    expect(await machine.begin(step, scheduled())).toEqual([{ status: 0, words: undefined }]);
    expect(await heard()).toMatchObject([{ from: 'X-ray room, DXROOM1', state: 'inProgress', started: '2026-11-29T10:11', what: 'Hips, three views', exposures: null, images: 0, otherDog: false }]);
    expect((await machine.begin(step, scheduled()))[0]!.status).toBe(0x0111);
  });

  it('is shown with what it counts when it is done, beside the images that came, and changes nothing that a person wrote down', async () => {
    const before = { version: (await road.look('operator')).version, films: road.screen.exposures };
    expect((await room.store([writeRadiograph(aRadiograph({ sopUid: image, studyUid: entry.string('x0020000d')!, accession: entry.string('x00080050')!, view: { code: 'none', label: 'None' } }))])).code).toBe(0);
    expect((await machine.goOn(step, { PerformedProcedureStepStatus: 'IN PROGRESS', PerformedSeriesSequence: [] }))[0]!.status).toBe(0);
    expect((await machine.goOn(step, END))[0]!.status).toBe(0);
    expect(await heard()).toMatchObject([{ state: 'completed', started: '2026-11-29T10:11', ended: '2026-11-29T10:20', exposures: 2, images: 1, here: 1, areaDose: 0.42, each: [{ kv: 66, mas: 5 }, { kv: 66, mas: 6 }] }]);
    expect({ version: road.screen.version, films: road.screen.exposures }).toEqual(before);
    expect((await rows(step)).map((row) => row.state)).toEqual(['inProgress', 'inProgress', 'completed']);
  });

  it('takes nothing back once it has said that it is done', async () => {
    const [answer] = await machine.goOn(step, { PerformedProcedureStepStatus: 'DISCONTINUED' });
    expect(answer).toEqual({ status: 0x0110, words: 'The step has ended and may not be changed' });
    expect(await rows(step)).toHaveLength(3);
  });

  it('that breaks off says why, and one that names another dog is shown so', async () => {
    const other = newUid();
    await machine.begin(other, scheduled({ PatientID: 'D-999999' }));
    await machine.goOn(other, { PerformedProcedureStepStatus: 'DISCONTINUED', PerformedProcedureStepDiscontinuationReasonCodeSequence: [{ CodeValue: '110501', CodingSchemeDesignator: 'DCM', CodeMeaning: 'Equipment failure' }] });
    expect((await heard()).find((one) => one.id === other)).toMatchObject({ state: 'discontinued', reason: 'Equipment failure', otherDog: true, patientId: 'D-999999' });
  });

  it('finds its order by the number of the scheduled step alone, or by where its images went', async () => {
    const [bySchedule, byImages] = [newUid(), newUid()];
    const [{ ScheduledProcedureStepID }] = scheduled().ScheduledStepAttributesSequence as [Elements];
    await machine.begin(bySchedule, scheduled({ ScheduledStepAttributesSequence: [{ ScheduledProcedureStepID }] }));
    await machine.begin(byImages, scheduled({ ScheduledStepAttributesSequence: [] }));
    expect((await rows(byImages))[0]!.orderId).toBeNull();
    await machine.goOn(byImages, END);
    expect((await heard()).map((one) => one.id)).toEqual(expect.arrayContaining([bySchedule, byImages]));
  });

  it('waits in the tray with what it says and why, where its numbers lead to no order, and a person sets it aside once, with a reason', async () => {
    const [lost, ours] = [newUid(), newUid()];
    const desk = await road.as('desk');
    const tray = async (who = desk) => (await who.read<Unmatched>('/api/unmatched')).performed;
    await machine.begin(ours, scheduled());
    await machine.begin(lost, scheduled({ PatientID: 'D-999999', ScheduledStepAttributesSequence: [{ AccessionNumber: 'NOWHERE-1' }] }));
    await machine.goOn(lost, { ...END, PerformedSeriesSequence: [] });
    expect(await tray()).toMatchObject([{
      from: 'X-ray room, DXROOM1', state: 'completed', why: 'Its number is that of no order here.',
      said: [{ what: 'Protocol', words: 'Hips, three views' }, { words: '2026-11-29 10:11' }, { words: '2026-11-29 10:20' }, { what: 'Animal id', words: 'D-999999' }, { what: 'Order number', words: 'NOWHERE-1' }, { what: 'Exposures', words: '2' }],
    }]);
    const other = await server.as(Object.values(server.scheme.houses).find((h) => h.id !== road.house.id)!.desk.name);
    expect(await tray(other)).toEqual([]);
    const aside = `/api/unmatched/performed/${(await tray())[0]!.id}/set-aside`;
    await desk.post(aside, { why: ' ' }).expect(400);
    await desk.post(`/api/unmatched/performed/${(await rows(ours))[0]!.id}/set-aside`, { why: 'A trial of the tube.' }).expect(404);
    expect((await desk.send<Unmatched>(aside, { why: 'A trial of the tube.' })).performed).toEqual([]);
    expect((await desk.post(aside, { why: 'Again.' })).body).toMatchObject({ code: 'ALREADY_THERE' });
    expect(await server.look((tx) => tx.performedSettled.findMany())).toMatchObject([{ sopUid: lost, why: 'A trial of the tube.', byName: road.house.desk.name, orderId: null }]);
  });

  it('goes from the tray to the order that a person puts all of its images into', async () => {
    const [own, first, second] = [newUid(), newUid(), newUid()];
    const desk = await road.as('desk');
    const film = (sopUid: string) => writeRadiograph(aRadiograph({ sopUid, studyUid: newUid(), accession: '', view: { code: 'none', label: 'None' } }));
    await machine.begin(own, scheduled({ ScheduledStepAttributesSequence: [] }));
    expect((await room.store([film(first), film(second)])).code).toBe(0);
    await machine.goOn(own, { ...END, PerformedSeriesSequence: [{ ReferencedImageSequence: [first, second].map((uid) => ({ ReferencedSOPClassUID: '1.2.840.10008.5.1.4.1.1.1.1', ReferencedSOPInstanceUID: uid })) }] });
    const { rows: images, performed } = await desk.read<Unmatched>('/api/unmatched');
    expect(performed).toMatchObject([{ why: 'It carries no number of an order.' }]);
    expect((await desk.send<Unmatched>(`/api/unmatched/${images[0]!.id}/assign`, { order: road.id })).performed).toHaveLength(1);
    expect((await desk.send<Unmatched>(`/api/unmatched/${images[1]!.id}/assign`, { order: road.id })).performed).toEqual([]);
    expect((await heard()).find((one) => one.id === own)).toMatchObject({ state: 'completed', images: 2, here: 2 });
  });

  it('is not understood when it begins with the end, goes on with what it never began, or has no such state', async () => {
    expect((await machine.begin(newUid(), scheduled({ PerformedProcedureStepStatus: 'COMPLETED' })))[0]!.status).toBe(0x0106);
    expect((await machine.goOn(newUid(), END))[0]!.status).toBe(0x0112);
    const third = newUid();
    await machine.begin(third, scheduled());
    expect((await machine.goOn(third, { PerformedProcedureStepStatus: 'TIRED' }))[0]!.status).toBe(0x0106);
  });

  it('of one practice cannot go on with another’s step', async () => {
    const other = Object.values(server.scheme.houses).find((h) => h.id !== road.house.id)!;
    const theirs = await ConsoleRoom.open(server, other.id, { calling: 'ELSEWHERE' });
    const stranger = new Modality(theirs);
    expect((await stranger.goOn(step, END))[0]!.status).toBe(0x0112);
    await stranger.close();
    await theirs.close();
    expect(server.errors).toEqual([]);
  });
});
