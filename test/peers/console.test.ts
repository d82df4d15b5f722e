import type { DataSet } from 'dicom-parser';
import { writeRadiograph, type Radiograph } from '#libs/dicom/write-radiograph';
import type { Machines, Unmatched } from '#libs/contracts/gateway';
import { newUid } from '#libs/dicom/uids';
import { describeWithPeer } from '#test/support/peers';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import { admit, judge, ownerSigns, sedate, watch } from '#test/support/visit-legs';
import { aRadiograph } from './support/a-film.js';
import { ConsoleRoom } from './support/console.js';
import { Modality } from './support/modality.js';
import { picked as pickedOn, viewsOf } from './support/picked.js';

let server: RunningServer;
let room: ConsoleRoom;
let road: Road;

const KEYS = ['PatientName', 'PatientID', 'AccessionNumber', 'StudyInstanceUID', 'PatientBirthDate', 'PatientSpeciesDescription', 'PatientWeight'];
const today = () => road.today.replaceAll('-', '');

const picked = (answer: DataSet, view: { code: string; label: string }, more: Partial<Radiograph> = {}) => pickedOn(answer, road.today, view, more);

describeWithPeer('storescu', 'an X-ray machine', () => {
  beforeAll(async () => {
    server = await startServer();
    road = await Road.book(server, { dog: 'Heron', studies: [['hipLaxity', 'threnfold']] });
    room = await ConsoleRoom.open(server, road.house.id);
  });
  afterAll(async () => {
    await room.close();
    await server.close();
  });

  it('is answered when it asks whether somebody is there, and one that nobody knows is not', async () => {
    expect((await room.echo()).code).toBe(0);
    for (const titles of [{ called: 'ANYBODY' }, { calling: 'STRANGER' }]) {
      const { code, out } = await room.echo(titles);
      expect(code).not.toBe(0);
      expect(out).toContain('Called AE Title Not Recognized');
    }
  });

  it('picks the dog from its list, each view and a retake become films of the order without anybody typing, and it hears that all four are safe', async () => {
    await ownerSigns(road);
    await road.untilVisit();
    await admit(road);
    await sedate(road);
    const answers = await room.worklist([...KEYS, `(0040,0100)[0].ScheduledProcedureStepStartDate=${today()}`, '(0040,0100)[0].Modality=DX']);
    expect(answers).toHaveLength(1);
    const answer = answers[0]!;
    expect(answer.string('x00080050')).toBe(road.screen.accession);
    const views = viewsOf(answer);
    expect(views.map((v) => v.code)).toEqual(['vdExtended', 'vdCompression', 'vdDistraction']);
    const machine = new Modality(room);
    const [step, taken] = [newUid(), [] as Radiograph[]];
    const send = (film: Radiograph) => {
      taken.push(film);
      return room.store([writeRadiograph(film)]);
    };
    await machine.begin(step, { PatientID: answer.string('x00100020'), ScheduledStepAttributesSequence: [{ StudyInstanceUID: answer.string('x0020000d'), AccessionNumber: answer.string('x00080050') }] });
    for (const view of views) {
      await watch(road);
      const sent = await send(picked(answer, view));
      expect([sent.code, room.log.all.filter((line) => line.includes('Error'))]).toEqual([0, []]);
    }
    await road.look('operator');
    await judge(road, road.screen.exposures[2]!.id, 'retake', [road.screen.choices.reasons![0]!.id]);
    await watch(road);
    await send(picked(answer, views[2]!));
    const images = taken.map((film) => film.sopUid!);
    await machine.goOn(step, { PerformedProcedureStepStatus: 'COMPLETED', TotalNumberOfExposures: images.length, PerformedSeriesSequence: [{ ReferencedImageSequence: images.map((ReferencedSOPInstanceUID) => ({ ReferencedSOPInstanceUID })) }] });
    await machine.ask(newUid(), images);
    const [safe] = await machine.reports.until((all) => all.length > 0);
    expect(safe).toMatchObject({ event: 1, elements: { ReferencedSOPSequence: images.map((ReferencedSOPInstanceUID) => ({ ReferencedSOPInstanceUID })) } });
    await machine.close();
    await road.look('operator');
    expect(road.screen.performed).toMatchObject([{ state: 'completed', exposures: 4, images: 4, here: 4, otherDog: false, films: ['Extended, attempt 1', expect.any(String), expect.any(String), expect.any(String)] }]);
    expect(road.screen.exposures.map((e) => [e.view, e.attempt, e.technique])).toEqual([['vdExtended', 1, {}], ['vdCompression', 1, {}], ['vdDistraction', 1, {}], ['vdDistraction', 2, {}]]);
    expect(road.screen.exposures[0]!.said).toEqual({ exposure: null, orientation: { right: 'left', foot: 'tail', asOfPeople: false } });
    expect(road.screen.holds.filter((h) => h.code === 'FILM_OF_OTHER_DOG')).toEqual([]);
    expect(server.errors).toEqual([]);
  });

  const house = () => road.house.id;
  const tray = async () => (await road.as('operator')).read<Unmatched>('/api/unmatched');
  const arrivals = () => server.look((tx) => tx.receivedImage.findMany({ where: { practiceId: house() }, orderBy: { at: 'asc' } }));

  it('sends the same image twice, and it is one; another image under that number is refused', async () => {
    const film = picked((await room.worklist([...KEYS, '(0040,0100)[0].Modality=DX']))[0]!, { code: 'none', label: 'A view of nothing here' });
    const before = (await arrivals()).length;
    expect((await room.store([writeRadiograph(film)])).code).toBe(0);
    expect((await room.store([writeRadiograph(film)])).code).toBe(0);
    const other = { ...film, pixels: { ...film.pixels, values: film.pixels.values.map((v) => 4095 - v) } };
    expect((await room.store([writeRadiograph(other)])).out).toMatch(/0xc111|Cannot/i);
    expect((await arrivals()).length).toBe(before + 1);
  });

  it('sends a view that nobody asked for, and it waits at its order until a person names it or leaves it out', async () => {
    await road.look('operator');
    expect(road.screen.arrived).toMatchObject([{ from: 'X-ray room, DXROOM1', otherDog: false, says: expect.stringContaining('A view of nothing here') as string }]);
    await server.settled();
    await road.look('operator');
    const [waiting] = road.screen.arrived;
    expect(waiting!.previewable).toBe(true);
    const operator = await road.as('operator');
    await operator.bytes(`/api/orders/${road.id}/images/${waiting!.image}/preview`);
    await operator.post(`/api/orders/${road.id}/arrived/${waiting!.image}/leave-out`, { why: 'A test of the detector.' }).expect(200);
    await operator.post(`/api/orders/${road.id}/arrived/${waiting!.image}/leave-out`, { why: 'Once more.' }).expect(409);
    expect((await road.look('operator')).arrived).toEqual([]);
  });

  it('sends an image without any number, and a person finds it in the tray and says whose it is', async () => {
    const { studyUid: _, ...film } = aRadiograph({ accession: '' });
    expect((await room.store([writeRadiograph({ ...film, studyUid: newUid() })])).code).toBe(0);
    const { rows, orders } = await tray();
    expect(rows).toMatchObject([{ from: 'X-ray room, DXROOM1', why: 'It carries no number of an order.' }]);
    expect(rows[0]!.said).toContainEqual({ what: 'Name', words: 'Wist Heron' });
    expect(orders.map((o) => o.id)).toContain(road.id);
    const operator = await road.as('operator');
    const left = await operator.send<Unmatched>(`/api/unmatched/${rows[0]!.id}/assign`, { order: road.id });
    expect(left.rows).toEqual([]);
    await operator.post(`/api/unmatched/${rows[0]!.id}/assign`, { order: road.id }).expect(409);
    await road.look('operator');
    expect(road.screen.arrived).toMatchObject([{ otherDog: true, patientId: 'D-000123' }]);
    expect(JSON.stringify((await arrivals()).map((r) => r.said))).not.toContain('Wist');
  });

  it('sends an image of another dog under the order’s number, and the order stands still until somebody has looked', async () => {
    await watch(road);
    const answer = (await room.worklist([...KEYS, '(0040,0100)[0].Modality=DX']))[0]!;
    const wrong = picked(answer, viewsOf(answer)[0]!, { dog: { ...aRadiograph().dog, animalId: 'D-999999' } });
    expect((await room.store([writeRadiograph(wrong)])).code).toBe(0);
    await road.look('operator');
    expect(road.screen.holds.map((h) => h.code)).toContain('FILM_OF_OTHER_DOG');
    // The next one waits as well: no film is added to an order in doubt.
    expect((await room.store([writeRadiograph(picked(answer, viewsOf(answer)[0]!))])).code).toBe(0);
    expect((await road.look('operator')).arrived.length).toBe(2);
  });

  it('of one practice sees nothing of another’s, and reaches nothing of it', async () => {
    const other = Object.values(server.scheme.houses).find((h) => h.id !== house())!;
    const theirs = await ConsoleRoom.open(server, other.id, { calling: 'ELSEWHERE' });
    try {
      expect(await theirs.worklist([...KEYS, '(0040,0100)[0].Modality=DX'])).toEqual([]);
      expect((await theirs.echo({ called: room.called })).code).not.toBe(0);
      const before = await arrivals();
      expect((await theirs.store([writeRadiograph(aRadiograph({ accession: road.screen.accession }))])).code).toBe(0);
      expect(await arrivals()).toEqual(before);
      expect(await server.look((tx) => tx.receivedImage.findMany({ where: { practiceId: other.id } }))).toMatchObject([{ orderId: null, why: 'numberUnknown' }]);
    } finally {
      await theirs.close();
    }
  });

  it('that was taken off the list is turned away', async () => {
    const manager = await road.as('manager');
    const { rows } = await manager.read<Machines>('/api/practice/machines');
    expect(rows).toMatchObject([{ aeTitle: 'DXROOM1', address: '127.0.0.1' }]);
    await (await road.as('operator')).post(`/api/practice/machines/${rows[0]!.id}/end`).expect(403);
    expect((await manager.send<Machines>(`/api/practice/machines/${rows[0]!.id}/end`)).rows).toEqual([]);
    expect((await room.echo()).code).not.toBe(0);
    const again = await manager.send<Machines>('/api/practice/machines', { name: 'Room 1', aeTitle: 'DXROOM1', address: '127.0.0.0/24' });
    expect(again).toMatchObject({ called: room.called, rows: [{ name: 'Room 1', address: '127.0.0.0/24' }] });
    expect((await room.echo()).code).toBe(0);
    for (const address of ['300.1.1.1', '10.0.0.0/4', 'fe80::/8']) await manager.post('/api/practice/machines', { name: 'Room 2', aeTitle: 'DXROOM2', address }).expect(400);
    expect(server.errors).toEqual([]);
  });
});
