import { randomUUID } from 'node:crypto';
import type { Bundle, ImagingStudy } from '@medplum/fhirtypes';
import type { Keys } from '#libs/contracts/integrations';
import type { PracticeScreen } from '#libs/contracts/register';
import type { OrderScreen } from '#libs/contracts/screens/order';
import { checkDicom } from '#libs/dicom/check-dicom';
import { sopClasses } from '#libs/dicom/uids';
import { faultsOf } from '#test/support/fhir-definitions';
import { Road } from '#test/support/road';
import { startServer, type RunningServer } from '#test/support/running-server';
import type { Session } from '#test/support/session';
import { dispatch } from '#test/support/study-legs';
import { unzip } from '#test/support/unzip';
import { admit, goHome, judge, ownerSigns, sedate, takeView } from '#test/support/visit-legs';

const TABLE = 'X-ray table 1';

let server: RunningServer;
let road: Road;
let manager: Session;
let table: string;
beforeAll(async () => {
  server = await startServer();
  road = await Road.book(server, { dog: 'Heron', studies: [['hipLaxity', 'threnfold']], inDays: 1 });
  manager = await road.as('manager');
  table = (await manager.read<PracticeScreen>('/api/practice')).equipment.find((e) => e.name === TABLE)!.id;
  await ownerSigns(road);
  await road.untilVisit();
  await admit(road);
  await sedate(road);
}, 60_000);
afterAll(() => server.close());

const enter = (pixelMm: number | null, device = table, as = manager) => as.post(`/api/practice/equipment/${device}/pixels`, { pixelMm });
const entered = async () => (await manager.read<PracticeScreen>('/api/practice')).equipment.find((e) => e.id === table)!.pixels;
const usual = () => ({ detector: table, right: 'left', lower: 'tail' }) as const;
const film = (screen: OrderScreen, id: string) => screen.exposures.find((e) => e.id === id)!;

describe('the pixels of a detector', () => {
  it('are entered by a manager, and every entry stays', async () => {
    const before = await server.look((tx) => tx.detectorSize.findMany({ where: { equipmentId: table } }));
    expect((await enter(0.148)).status).toBe(200);
    expect((await enter(null)).status).toBe(200);
    expect(await entered()).toMatchObject({ mm: null, by: road.house.manager.name });
    expect((await enter(0.139)).status).toBe(200);
    expect(await entered()).toMatchObject({ mm: 0.139, by: road.house.manager.name });
    const rows = await server.look((tx) => tx.detectorSize.findMany({ where: { equipmentId: table }, orderBy: { seq: 'asc' } }));
    expect(rows.slice(before.length).map((row) => row.pixelMm)).toEqual([0.148, null, 0.139]);
    await expect(server.look((tx) => tx.detectorSize.updateMany({ data: { pixelMm: 0.2 } }))).rejects.toThrow();
    expect(await server.look((tx) => tx.audit.count({ where: { action: 'stateDetectorSize', subject: table } }))).toBe(3);
  });

  it.each([[139, /139 µm is written 0\.139/], [0.001, /at least 0\.02 mm.*manual or on its label/]])('of %d mm cannot be, and a sentence says where the size stands', async (mm, words) => {
    const answer = await enter(mm);
    expect(answer.status).toBe(400);
    expect(answer.text).toMatch(words);
    expect(await entered()).toMatchObject({ mm: 0.139 });
  });

  it('are no matter of a device that has none, of other roles, or of another practice', async () => {
    const { equipment } = await manager.read<PracticeScreen>('/api/practice');
    const other = Object.values(server.scheme.houses).find((house) => house.id !== road.house.id)!;
    expect((await enter(0.14, equipment.find((e) => e.kind === 'monitor')!.id)).status).toBe(400);
    expect((await enter(0.14, table, await road.as('operator'))).status).toBe(403);
    expect((await enter(0.14, table, await server.as(other.manager.name))).status).toBe(404);
    expect((await enter(0.14, randomUUID())).status).toBe(404);
    expect(await entered()).toMatchObject({ mm: 0.139 });
  });
});

describe('a picture', () => {
  let sized: string;
  let plain: string;

  it('has no size unless somebody says that it was exported pixel for pixel', async () => {
    plain = await takeView(road, 'vdExtended');
    expect(film(road.screen, plain)).toMatchObject({ kind: 'png', stated: null, picture: { width: 240, height: 320 } });
    expect(film(road.screen, plain).picture!.spacing).toBeUndefined();
  });

  it('has the size that is entered for its detector, and is measured in it', async () => {
    expect(road.screen.choices.detectors).toEqual([{ id: table, name: `${TABLE}, pixels of 0.139 mm` }]);
    sized = await takeView(road, 'vdCompression', 'jpeg', { size: usual() });
    expect(film(road.screen, sized)).toMatchObject({ kind: 'jpeg', stated: { pixelMm: 0.139, right: 'left', lower: 'tail', detector: TABLE }, picture: { spacing: { row: 0.139, column: 0.139 } }, sealed: false });
    expect(road.screen.happened.map((h) => h.what)).toContain(`Pixels of a picture said to be 0.139 mm, as for ${TABLE}`);
    await road.act('operator', 'markFilm', road.visit.id, { exposure: sized, marks: [{ kind: 'midline', points: [{ x: 100, y: 10 }, { x: 100, y: 200 }] }] });
    const marks = await server.look((tx) => tx.roomMark.findMany({ where: { exposure: sized } }));
    expect(marks.map((m) => m.picture)).toEqual([{ width: 240, height: 320, spacing: { row: 0.139, column: 0.139 } }]);
  });

  it('keeps that size when another is entered', async () => {
    await enter(0.15);
    expect(film(await road.look(), sized).stated).toMatchObject({ pixelMm: 0.139 });
    await enter(0.139);
  });

  it('is given a size later, and none again, by whoever knows', async () => {
    const say = (exposure: string, size?: ReturnType<typeof usual>) => road.act('operator', 'stateSize', road.visit.id, { exposure, ...(size && { size }) });
    await say(plain, usual());
    expect(film(road.screen, plain).stated).toMatchObject({ pixelMm: 0.139 });
    await say(plain);
    expect(film(road.screen, plain).stated).toBeNull();
    expect((await road.attempt('desk', 'stateSize', road.visit.id, { exposure: plain })).status).toBe(403);
  });

  it('has none of a detector that is not here or that nobody knows the pixels of, nor lies as none of its view does', async () => {
    const { equipment } = await manager.read<PracticeScreen>('/api/practice');
    const [unknown, before] = [equipment.find((e) => e.kind === 'xray' && e.pixels === null)!.id, road.screen.version];
    for (const [size, path] of [
      [{ ...usual(), detector: unknown }, 'size.detector'], [{ ...usual(), detector: randomUUID() }, 'size.detector'], [{ ...usual(), right: 'toes' as const }, 'size.right'],
    ] as const) {
      const answer = await road.attempt('operator', 'stateSize', road.visit.id, { exposure: plain, size });
      expect({ status: answer.status, paths: (answer.body as { fields: { path: string }[] }).fields.map((f) => f.path) }).toEqual({ status: 400, paths: [path] });
    }
    const other = Object.values(server.scheme.houses).find((house) => house.id !== road.house.id)!;
    const theirs = (await (await server.as(other.manager.name)).read<PracticeScreen>('/api/practice')).equipment.find((e) => e.kind === 'xray')!.id;
    await enter(0.2, theirs, await server.as(other.manager.name));
    expect((await road.attempt('operator', 'stateSize', road.visit.id, { exposure: plain, size: { ...usual(), detector: theirs } })).status).toBe(400);
    expect((await road.look('operator')).version).toBe(before);
  });

  it('that is a DICOM file says its size itself', async () => {
    const image = await road.upload('dicom');
    const study = road.study().id;
    const taken = { view: 'vdDistraction', serves: [study], image, marker: 'L' as const, people: [road.slot.operator.id], technique: {} };
    const answer = await road.attempt('operator', 'takeView', study, { ...taken, size: usual() });
    expect(answer.status).toBe(400);
    expect(answer.text).toContain('A DICOM file says itself how large its pixels are');
    await road.act('operator', 'takeView', study, taken);
    expect(road.screen.exposures.at(-1)).toMatchObject({ kind: 'dicom', stated: null, picture: { spacing: { row: 0.14, column: 0.14 } } });
  });

  it('is told to other programs as what it leaves as, beside the DICOM file with the numbers of its own', async () => {
    const { made } = await manager.send<Keys>('/api/practice/keys', { name: 'Diary', scopes: ['orders'] });
    const answer = await fetch(`${server.url}/fhir/ImagingStudy?patient=${road.dog.id}`, { headers: { authorization: `Bearer ${made!.key}` } });
    const study = ((await answer.json()) as Bundle).entry![0]!.resource as ImagingStudy;
    expect(faultsOf(study)).toEqual([]);
    const own = checkDicom(await (await road.as('operator')).bytes(`/api/orders/${road.id}/images/${road.screen.exposures.at(-1)!.image}/file`));
    expect(study).toMatchObject({ numberOfSeries: 3, numberOfInstances: 3 });
    expect(study.series!.map(({ modality, laterality, instance }) => [modality!.code, laterality!.code, instance![0]!.sopClass!.code])).toEqual(
      [['OT', '51440002', `urn:oid:${sopClasses.secondaryCapture}`], ['DX', '51440002', `urn:oid:${sopClasses.dxForPresentation}`], ['DX', '51440002', `urn:oid:${sopClasses.dxForPresentation}`]]);
    expect(study.series!.at(-1)).toMatchObject({ uid: own.seriesInstanceUid, instance: [{ uid: own.sopInstanceUid }] });
  });

  it('leaves as Digital X-Ray with a size and as a picture without, and then nothing is said of it any more', async () => {
    for (const { id } of road.screen.exposures) await judge(road, id, 'accept');
    await road.act('operator', 'endImaging', road.visit.id, {});
    await goHome(road);
    const reader = await dispatch(road, road.study().id);
    const files = await unzip(await reader.session.bytes(`${reader.path}/zip`));
    expect([...files.keys()].sort()).toEqual(['01-vdExtended-1.png', '02-vdCompression-1.dcm', '03-vdDistraction-1.dcm', 'manifest.json', 'summary.json']);
    expect(checkDicom(files.get('02-vdCompression-1.dcm')!)).toMatchObject({ sopClassUid: sopClasses.dxForPresentation, spacing: { millimetres: [0.139, 0.139], at: 'detector' }, orientation: { right: 'left', foot: 'tail' }, patientName: expect.stringMatching(/^P-/) });
    // a film by itself tells no more than one of the package
    for (const [n, name] of [[0, '01-vdExtended-1.png'], [1, '02-vdCompression-1.dcm'], [2, '03-vdDistraction-1.dcm']] as const) {
      const alone = await reader.session.bytes(`${reader.path}/images/${road.screen.exposures[n]!.image}/file`);
      expect(alone.equals(files.get(name)!)).toBe(true);
      expect(alone.toString('latin1')).not.toMatch(/Ownername|Calledname|OURNUMBER/);
    }
    const refused = await road.attempt('operator', 'stateSize', road.visit.id, { exposure: sized }, { version: (await road.look('operator')).version });
    expect(refused.status).toBe(422);
    expect(road.screen.next.map((n) => n.action)).not.toContain('stateSize');
    expect(film(road.screen, sized)).toMatchObject({ sealed: true, stated: { pixelMm: 0.139 } });
  });
});
